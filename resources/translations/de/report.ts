<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>chore</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>chores</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clash</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clashes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>egg place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>egg places</source>
   <translation>Eiplätze</translation>
  </message>
  <message>
   <source>pair</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pairs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>season {year}</source>
   <translation>Saison {year}</translation>
  </message>
  <message>
   <source>small change</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>small changes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>trial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>trials</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
