<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>more heat source</source>
   <translation>weitere Wärmequelle</translation>
  </message>
  <message>
   <source>more heat sources</source>
   <translation>weitere Wärmequellen</translation>
  </message>
 </context>
</TS>
