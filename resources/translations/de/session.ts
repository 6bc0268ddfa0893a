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
 </context>
</TS>
