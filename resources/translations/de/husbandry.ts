<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>Age at half lay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age at the first egg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age at which birds are feathered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age at which birds are processed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age at which birds can be sexed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age at which birds may go outdoors</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age at which cocks are mature</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age at which heat goes off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age at which starter feed ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age from which the night limit no longer holds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bobwhite</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Body weight by age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Brooder heat by age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Button quail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Chicks for each lamp or plate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Coldest night for birds that have just gone out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Coturnix heavy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Coturnix standard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Day length for layers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Day of lockdown: turning stops, into the hatcher</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Day of the first candling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Day of the second candling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days apart for birds brought in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days between changes of bedding, brooder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days between changes of bedding, pen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days between draining the water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days between fresh dust baths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days between moves of a pen on grass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days empty between two batches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days from setting to hatch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days of hardening off before going out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days of lay before hens are replaced</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days of long light before the first egg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days that ages in one brooder may differ</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days that dry chicks may stay in the hatcher</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days that eggs may wait before setting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days that the old drinker stays beside the new</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days with pebbles in the drinker</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drinker edge for each bird</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Eggs for each 100 hens, each day, by age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Feed for each bird, each day, by age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Feed of a grown bird, each day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Feeder edge for each bird, by age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fertile eggs of eggs set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Floor for each bird by age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hatch lost for each day that eggs wait (points)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hatch of eggs set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hatch of fertile eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hatcher humidity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hens for each cock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Most birds together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Most floor for each bird at which a group is calm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Part of the hatched chicks still alive, by age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Protein in grower feed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Protein in layer feed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Protein in starter feed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rest of shipped eggs before setting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Setter humidity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Setter temperature, moving air</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Turns a day by hand</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
