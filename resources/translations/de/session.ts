<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source> The details are in {path}.</source>
   <translation> Einzelheiten stehen in {path}.</translation>
  </message>
  <message>
   <source>Something went wrong inside the program; what was saved stays saved.{where}</source>
   <translation>Im Programm ist etwas schiefgegangen; was gespeichert war, bleibt gespeichert.{where}</translation>
  </message>
  <message>
   <source>Trial {n}</source>
   <translation>Versuch {n}</translation>
  </message>
  <message>
   <source>a file of up to {most} MB is accepted</source>
   <translation>eine Datei bis {most} MB wird angenommen</translation>
  </message>
  <message>
   <source>exported farm</source>
   <translation>exportierter Hof</translation>
  </message>
  <message>
   <source>page or picture by Quailsched</source>
   <translation>Seite oder Bild von Quailsched</translation>
  </message>
  <message>
   <source>table of this kind by Quailsched</source>
   <translation>solche Tabelle von Quailsched</translation>
  </message>
  <message>
   <source>the beginning of the history</source>
   <translation>der Anfang der Geschichte</translation>
  </message>
  <message>
   <source>the plan</source>
   <translation>der Plan</translation>
  </message>
  <message>
   <source>the trial “{name}”</source>
   <translation>der Versuch „{name}“</translation>
  </message>
  <message>
   <source>{path} cannot be written: it is no plain file.</source>
   <translation>{path} ist nicht schreibbar: Es ist keine gewöhnliche Datei.</translation>
  </message>
  <message>
   <source>{path} is there already, is no {words}, and was left as it is; another file name is accepted.</source>
   <translation>{path} gibt es schon, ist kein {words} und blieb, wie es ist; ein anderer Dateiname wird angenommen.</translation>
  </message>
 </context>
</TS>
