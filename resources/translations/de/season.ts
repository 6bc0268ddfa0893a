<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>bird</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>birds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>chick</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>chicks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>egg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heat source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heat sources</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>laying bird</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>laying birds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>surplus cock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>surplus cocks</source>
   <translation>überzählige Hähne</translation>
  </message>
 </context>
</TS>
