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
   <translation type="unfinished" />
  </message>
  <message>
   <source>exported farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>page or picture by Quailsched</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the trial “{name}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} cannot be written: it is no plain file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is there already, is no {words}, and was left as it is; another file name is accepted.</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
