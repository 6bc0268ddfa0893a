<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>accepted clash</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>accepted clashes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grown bird</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grown birds</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
