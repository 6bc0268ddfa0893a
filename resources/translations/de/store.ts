<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>A record of this change is not in the file any more: {id}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The history in this file lacks its step {number}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is nothing to redo.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is nothing to undo.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a JSON document as export writes it is needed ({lower}{value})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a UUID such as 6f1c9f0e-5d0b-4c58-9f5e-0c6a1b7d2e43 is accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a list in square brackets is needed, [] for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a number from 0 is accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a {value} in it belongs to a {value2} that is not there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an entry has it already, each needs its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an exported farm, with format “{FORMAT}”, is accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an id of at least one letter is needed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>another program is writing to it; try again when that has finished</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot be made</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot be opened</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot be read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot be written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>could not be written, nothing was changed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>document, farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>document, field {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>document, format</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>document, line {lineno}, column {colno}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>document, version</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>document, {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>farm, id</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>groups within groups as in an exported farm are accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it cannot be opened; it may have been moved or its folder may not be written to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it cannot be read through</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it holds {farms} farms, not one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it is a farm file or another database; a JSON document is needed, such as export writes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it is a folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it is not UTF-8 text (byte {value} cannot be used)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it lacks a table or a field</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it stands twice in one group</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it was exported by a newer Quailsched; this one reads</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its end is missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its folder is not a folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its groups are nested too deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its history has a gap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its version is {version}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not every value in it makes sense</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>once is accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>published, item {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the disk does not read or write as it should, or is full</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the disk is full</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the disk may not be written to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the disk quota is used up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the farm's own fields are needed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file is damaged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file or its folder may not be read or written to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file or its folder may not be written to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the name is too long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the text ends too early for JSON</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no such field here, only {join}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no such file or folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>this Quailsched reads</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} cannot be opened: it is not a file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} cannot be opened: there is no such file in {parent}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} cannot be read: {reason}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} cannot be written: it is a folder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is damaged ({how}) and was left as it is. Open a back-up of it instead.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is empty: there is no farm in it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is not a farm file of Quailsched but of another program.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is not a farm file of Quailsched.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is of an older version, and the copy that is kept of it before it is changed cannot be made: {error}. Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is there already and was left as it is; choose another name, or open it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} was changed by another window or program since it was opened. Open it again to go on from there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} was written by a newer Quailsched (version {version}, this one reads up to {newest}). It was left as it is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{section}, item {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value} has it already, each record needs its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{why} versions 1 to {VERSION}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{words}, id</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{words}, sequence</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{words}, uid</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>“{value}” is no JSON</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
