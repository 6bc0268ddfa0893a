<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>No chores ahead</source>
   <translation>Keine Aufgaben voraus</translation>
  </message>
  <message>
   <source>Nothing is planned for these days.</source>
   <translation>Für diese Tage ist nichts geplant.</translation>
  </message>
  <message>
   <source>Quail chores</source>
   <translation>Aufgaben mit Wachteln</translation>
  </message>
  <message>
   <source>Who can do it: {who}.</source>
   <translation>Wer es tun kann: {who}.</translation>
  </message>
  <message>
   <source>calendar file: “{path}” cannot be written; {why}.</source>
   <translation>Kalenderdatei: „{path}“ kann nicht geschrieben werden; {why}.</translation>
  </message>
  <message>
   <source>farm id: “{id}” cannot be used; a UUID such as {example} would be accepted.</source>
   <translation>Kennung des Hofs: „{id}“ geht nicht; angenommen würde eine UUID wie {example}.</translation>
  </message>
  <message>
   <source>it is a folder; a file name that ends in .ics would be accepted</source>
   <translation>es ist ein Ordner; angenommen würde ein Dateiname, der auf .ics endet</translation>
  </message>
  <message>
   <source>it is no plain file; a file name that ends in .ics would be accepted</source>
   <translation>es ist keine gewöhnliche Datei; angenommen würde ein Dateiname, der auf .ics endet</translation>
  </message>
  <message>
   <source>no grown-up is at home that day</source>
   <translation>an diesem Tag ist niemand Erwachsenes zu Hause</translation>
  </message>
  <message>
   <source>nobody is at home that day</source>
   <translation>an diesem Tag ist niemand zu Hause</translation>
  </message>
  <message>
   <source>quiet</source>
   <translation>ruhig</translation>
  </message>
  <message>
   <source>the system says “{reason}”; another file name or folder would be accepted</source>
   <translation>das System sagt „{reason}“; angenommen würde ein anderer Dateiname oder Ordner</translation>
  </message>
  <message>
   <source>there is no folder “{folder}”; a folder that exists would be accepted</source>
   <translation>den Ordner „{folder}“ gibt es nicht; angenommen würde ein vorhandener Ordner</translation>
  </message>
  <message>
   <source>there is not enough room on the disk; the calendar is as it was before</source>
   <translation>auf dem Datenträger ist nicht genug Platz; der Kalender ist wie vorher</translation>
  </message>
  <message>
   <source>you may not write in “{folder}”; a folder of your own would be accepted</source>
   <translation>in „{folder}“ darf nicht geschrieben werden; angenommen würde ein eigener Ordner</translation>
  </message>
 </context>
</TS>
