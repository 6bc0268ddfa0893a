<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>Apr</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Aug</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dec</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Feb</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fri</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Friday</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Jan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Jul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Jun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Mar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>May</source>
   <translation>Mai</translation>
  </message>
  <message>
   <source>Mon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Monday</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nov</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Oct</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Saturday</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sunday</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thu</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thursday</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tuesday</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wednesday</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sq ft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>value</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>values</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{hours} hour</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{hours} hours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{names} and {last}</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
