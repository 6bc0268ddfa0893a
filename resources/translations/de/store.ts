<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>A record of this change is not in the file any more: {id}.</source>
   <translation>Ein Eintrag dieser Änderung ist nicht mehr in der Datei: {id}.</translation>
  </message>
  <message>
   <source>The history in this file lacks its step {number}.</source>
   <translation>In der Geschichte dieser Datei fehlt Schritt {number}.</translation>
  </message>
  <message>
   <source>There is nothing to redo.</source>
   <translation>Es gibt nichts zu wiederholen.</translation>
  </message>
  <message>
   <source>There is nothing to undo.</source>
   <translation>Es gibt nichts zurückzunehmen.</translation>
  </message>
  <message>
   <source>a JSON document as export writes it is needed ({lower}{value})</source>
   <translation>ein JSON-Dokument, wie export es schreibt, ist nötig ({lower}{value})</translation>
  </message>
  <message>
   <source>a UUID such as 6f1c9f0e-5d0b-4c58-9f5e-0c6a1b7d2e43 is accepted</source>
   <translation>eine UUID wie 6f1c9f0e-5d0b-4c58-9f5e-0c6a1b7d2e43 wird angenommen</translation>
  </message>
  <message>
   <source>a file of that name is there already</source>
   <translation>eine Datei dieses Namens gibt es schon</translation>
  </message>
  <message>
   <source>a list in square brackets is needed, [] for none</source>
   <translation>eine Liste in eckigen Klammern ist nötig, [] für keine</translation>
  </message>
  <message>
   <source>a number from 0 is accepted</source>
   <translation>eine Zahl ab 0 wird angenommen</translation>
  </message>
  <message>
   <source>a {value} in it belongs to a {value2} that is not there</source>
   <translation>darin gehört {value} zu {value2}, das nicht da ist</translation>
  </message>
  <message>
   <source>an entry has it already, each needs its own</source>
   <translation>ein Eintrag hat sie schon, jeder braucht seine eigene</translation>
  </message>
  <message>
   <source>an exported farm, with format “{FORMAT}”, is accepted</source>
   <translation>ein exportierter Hof mit dem Format „{FORMAT}“ wird angenommen</translation>
  </message>
  <message>
   <source>an id of at least one letter is needed</source>
   <translation>eine id aus mindestens einem Zeichen ist nötig</translation>
  </message>
  <message>
   <source>another program is writing to it; try again when that has finished</source>
   <translation>ein anderes Programm schreibt gerade hinein; danach noch einmal versuchen</translation>
  </message>
  <message>
   <source>cannot be made</source>
   <translation>lässt sich nicht anlegen</translation>
  </message>
  <message>
   <source>cannot be opened</source>
   <translation>lässt sich nicht öffnen</translation>
  </message>
  <message>
   <source>cannot be read</source>
   <translation>ist nicht lesbar</translation>
  </message>
  <message>
   <source>cannot be written</source>
   <translation>ist nicht schreibbar</translation>
  </message>
  <message>
   <source>could not be written, nothing was changed</source>
   <translation>war nicht schreibbar, nichts wurde geändert</translation>
  </message>
  <message>
   <source>document, farm</source>
   <translation>Dokument, Hof</translation>
  </message>
  <message>
   <source>document, field {name}</source>
   <translation>Dokument, Feld {name}</translation>
  </message>
  <message>
   <source>document, format</source>
   <translation>Dokument, Format</translation>
  </message>
  <message>
   <source>document, line {lineno}, column {colno}</source>
   <translation>Dokument, Zeile {lineno}, Spalte {colno}</translation>
  </message>
  <message>
   <source>document, version</source>
   <translation>Dokument, Version</translation>
  </message>
  <message>
   <source>document, {name}</source>
   <translation>Dokument, {name}</translation>
  </message>
  <message>
   <source>farm, id</source>
   <translation>Hof, id</translation>
  </message>
  <message>
   <source>groups within groups as in an exported farm are accepted</source>
   <translation>Gruppen in Gruppen wie in einem exportierten Hof werden angenommen</translation>
  </message>
  <message>
   <source>it cannot be opened; it may have been moved or its folder may not be written to</source>
   <translation>sie lässt sich nicht öffnen; vielleicht wurde sie verschoben, oder ihr Ordner darf nicht beschrieben werden</translation>
  </message>
  <message>
   <source>it cannot be read through</source>
   <translation>sie lässt sich nicht ganz lesen</translation>
  </message>
  <message>
   <source>it holds {farms} farms, not one</source>
   <translation>sie enthält {farms} Höfe statt einem</translation>
  </message>
  <message>
   <source>it is a farm file or another database; a JSON document is needed, such as export writes</source>
   <translation>es ist eine Hofdatei oder eine andere Datenbank; nötig ist ein JSON-Dokument, wie export es schreibt</translation>
  </message>
  <message>
   <source>it is a folder</source>
   <translation>es ist ein Ordner</translation>
  </message>
  <message>
   <source>it is not UTF-8 text (byte {value} cannot be used)</source>
   <translation>es ist kein UTF-8-Text (Byte {value} ist nicht brauchbar)</translation>
  </message>
  <message>
   <source>it lacks a table or a field</source>
   <translation>ihr fehlt eine Tabelle oder ein Feld</translation>
  </message>
  <message>
   <source>it stands twice in one group</source>
   <translation>es steht zweimal in einer Gruppe</translation>
  </message>
  <message>
   <source>it was exported by a newer Quailsched; this one reads</source>
   <translation>es wurde von einem neueren Quailsched exportiert; dieses liest</translation>
  </message>
  <message>
   <source>its end is missing</source>
   <translation>ihr Ende fehlt</translation>
  </message>
  <message>
   <source>its folder is not a folder</source>
   <translation>ihr Ordner ist kein Ordner</translation>
  </message>
  <message>
   <source>its groups are nested too deep</source>
   <translation>seine Gruppen sind zu tief geschachtelt</translation>
  </message>
  <message>
   <source>its history has a gap</source>
   <translation>ihre Geschichte hat eine Lücke</translation>
  </message>
  <message>
   <source>its version is {version}</source>
   <translation>ihre Version ist {version}</translation>
  </message>
  <message>
   <source>not every value in it makes sense</source>
   <translation>nicht jeder Wert darin ergibt Sinn</translation>
  </message>
  <message>
   <source>once is accepted</source>
   <translation>einmal wird angenommen</translation>
  </message>
  <message>
   <source>published, item {place}</source>
   <translation>veröffentlicht, Eintrag {place}</translation>
  </message>
  <message>
   <source>the disk does not read or write as it should, or is full</source>
   <translation>die Platte liest oder schreibt nicht, wie sie soll, oder ist voll</translation>
  </message>
  <message>
   <source>the disk is full</source>
   <translation>die Platte ist voll</translation>
  </message>
  <message>
   <source>the disk may not be written to</source>
   <translation>die Platte darf nicht beschrieben werden</translation>
  </message>
  <message>
   <source>the disk quota is used up</source>
   <translation>der zugeteilte Plattenplatz ist aufgebraucht</translation>
  </message>
  <message>
   <source>the farm's own fields are needed</source>
   <translation>die eigenen Felder des Hofs sind nötig</translation>
  </message>
  <message>
   <source>the file is damaged</source>
   <translation>die Datei ist beschädigt</translation>
  </message>
  <message>
   <source>the file or its folder may not be read or written to</source>
   <translation>die Datei oder ihr Ordner darf nicht gelesen oder beschrieben werden</translation>
  </message>
  <message>
   <source>the file or its folder may not be written to</source>
   <translation>die Datei oder ihr Ordner darf nicht beschrieben werden</translation>
  </message>
  <message>
   <source>the name is too long</source>
   <translation>der Name ist zu lang</translation>
  </message>
  <message>
   <source>the text ends too early for JSON</source>
   <translation>der Text endet zu früh für JSON</translation>
  </message>
  <message>
   <source>there is no such field here, only {join}</source>
   <translation>so ein Feld gibt es hier nicht, nur {join}</translation>
  </message>
  <message>
   <source>there is no such file or folder</source>
   <translation>so eine Datei oder so einen Ordner gibt es nicht</translation>
  </message>
  <message>
   <source>this Quailsched reads</source>
   <translation>dieses Quailsched liest</translation>
  </message>
  <message>
   <source>{path} cannot be opened: it is not a file.</source>
   <translation>{path} lässt sich nicht öffnen: Es ist keine Datei.</translation>
  </message>
  <message>
   <source>{path} cannot be opened: there is no such file in {parent}.</source>
   <translation>{path} lässt sich nicht öffnen: In {parent} gibt es keine solche Datei.</translation>
  </message>
  <message>
   <source>{path} cannot be read: {reason}.</source>
   <translation>{path} ist nicht lesbar: {reason}.</translation>
  </message>
  <message>
   <source>{path} cannot be written: it is a folder.</source>
   <translation>{path} ist nicht schreibbar: Es ist ein Ordner.</translation>
  </message>
  <message>
   <source>{path} is damaged ({how}) and was left as it is. Open a back-up of it instead.</source>
   <translation>{path} ist beschädigt ({how}) und blieb, wie sie ist. Stattdessen eine Sicherung davon öffnen.</translation>
  </message>
  <message>
   <source>{path} is empty: there is no farm in it.</source>
   <translation>{path} ist leer: Darin ist kein Hof.</translation>
  </message>
  <message>
   <source>{path} is not a farm file of Quailsched but of another program.</source>
   <translation>{path} ist keine Hofdatei von Quailsched, sondern von einem anderen Programm.</translation>
  </message>
  <message>
   <source>{path} is not a farm file of Quailsched.</source>
   <translation>{path} ist keine Hofdatei von Quailsched.</translation>
  </message>
  <message>
   <source>{path} is of an older version, and the copy that is kept of it before it is changed cannot be made: {error}. Nothing was changed.</source>
   <translation>{path} ist von einer älteren Version, und die Kopie, die vor der Änderung davon bleibt, lässt sich nicht anlegen: {error}. Nichts wurde geändert.</translation>
  </message>
  <message>
   <source>{path} is there already and was left as it is; choose another name, or open it.</source>
   <translation>{path} gibt es schon und blieb, wie sie ist; einen anderen Namen wählen oder sie öffnen.</translation>
  </message>
  <message>
   <source>{path} was changed by another window or program since it was opened. Open it again to go on from there.</source>
   <translation>{path} wurde von einem anderen Fenster oder Programm geändert, seit sie geöffnet ist. Sie noch einmal öffnen, um dort weiterzumachen.</translation>
  </message>
  <message>
   <source>{path} was written by a newer Quailsched (version {version}, this one reads up to {newest}). It was left as it is.</source>
   <translation>{path} wurde von einem neueren Quailsched geschrieben (Version {version}, dieses liest bis {newest}). Sie blieb, wie sie ist.</translation>
  </message>
  <message>
   <source>{section}, item {place}</source>
   <translation>{section}, Eintrag {place}</translation>
  </message>
  <message>
   <source>{value} has it already, each record needs its own</source>
   <translation>{value} hat sie schon, jeder Eintrag braucht seine eigene</translation>
  </message>
  <message>
   <source>{why} versions 1 to {VERSION}</source>
   <translation>{why} die Versionen 1 bis {VERSION}</translation>
  </message>
  <message>
   <source>{words}, id</source>
   <translation>{words}, id</translation>
  </message>
  <message>
   <source>{words}, sequence</source>
   <translation>{words}, Folgenummer</translation>
  </message>
  <message>
   <source>{words}, uid</source>
   <translation>{words}, uid</translation>
  </message>
  <message>
   <source>“{value}” is no JSON</source>
   <translation>„{value}“ ist kein JSON</translation>
  </message>
 </context>
</TS>
