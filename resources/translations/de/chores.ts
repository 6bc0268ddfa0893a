<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>times</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
