<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>About {number} chicks expected. Leave them in until dry and fluffy.</source>
   <translation>Etwa {number} Küken erwartet. Drin lassen, bis sie trocken und flauschig sind.</translation>
  </message>
  <message>
   <source>Airy crates, not too full, dark and cool; a note on feed and age with them.</source>
   <translation>Luftige Kisten, nicht zu voll, dunkel und kühl; ein Zettel mit Futter und Alter dazu.</translation>
  </message>
  <message>
   <source>Bedding out, scrape, wash, disinfect, dry and air for {days} before the next come in.</source>
   <translation>Einstreu hinaus, kratzen, waschen, desinfizieren, trocknen und lüften, bevor die nächsten kommen: {days}.</translation>
  </message>
  <message>
   <source>Big enough now not to drown in the lip.</source>
   <translation>Jetzt groß genug, um in der Rinne nicht zu ertrinken.</translation>
  </message>
  <message>
   <source>Candle the eggs of {batch}</source>
   <translation>Eier von {batch} schieren</translation>
  </message>
  <message>
   <source>Change the bedding in {place}</source>
   <translation>Einstreu in {place} wechseln</translation>
  </message>
  <message>
   <source>Clean out {place}</source>
   <translation>{place} ausmisten</translation>
  </message>
  <message>
   <source>Cocks rust-red, hens speckled (wild colour only); write down hens, cocks and unsure ones.</source>
   <translation>Hähne rostrot, Hennen gefleckt (nur wildfarben); Hennen, Hähne und unsichere aufschreiben.</translation>
  </message>
  <message>
   <source>Collect the eggs of {place}</source>
   <translation>Eier aus {place} einsammeln</translation>
  </message>
  <message>
   <source>Daylight and lamp together, half an hour more each few days, on a timer; dusk dimmed.</source>
   <translation>Tageslicht und Lampe zusammen, alle paar Tage eine halbe Stunde mehr, mit Schaltuhr; abends dämmern lassen.</translation>
  </message>
  <message>
   <source>Drain and scrub the water of {place}</source>
   <translation>Wasser in {place} leeren und Behälter bürsten</translation>
  </message>
  <message>
   <source>Dry and dust-poor shavings or sand, never cedar, no slick paper; damp spots out at once.</source>
   <translation>Trockene, staubarme Späne oder Sand, nie Zeder, kein glattes Papier; feuchte Stellen sofort heraus.</translation>
  </message>
  <message>
   <source>Dry and fluffy first. {warm} under the heat, pebbles in the drinkers; dip each beak in water, feed on rough paper. Lamp at least {height} from the bedding.</source>
   <translation>Erst trocken und flauschig. {warm} unter der Wärme, Kiesel in den Tränken; jeden Schnabel ins Wasser tauchen, Futter auf rauem Papier. Lampe mindestens {height} über der Einstreu.</translation>
  </message>
  <message>
   <source>Dry sand with a little wood ash, a hand deep, under cover.</source>
   <translation>Trockener Sand mit etwas Holzasche, eine Hand tief, überdacht.</translation>
  </message>
  <message>
   <source>Empty the barrel or drinkers, brush, rinse, fill; youngest birds first, hands washed between places.</source>
   <translation>Fass oder Tränken leeren, bürsten, spülen, füllen; jüngste Vögel zuerst, zwischen den Plätzen Hände waschen.</translation>
  </message>
  <message>
   <source>Evenly through the day, the other way each time; warm, clean hands.</source>
   <translation>Gleichmäßig über den Tag, jedes Mal andersherum; warme, saubere Hände.</translation>
  </message>
  <message>
   <source>Feathered and warm enough by now; look again after dark.</source>
   <translation>Inzwischen befiedert und warm genug; nach Einbruch der Dunkelheit noch einmal nachsehen.</translation>
  </message>
  <message>
   <source>First eggs of {batch} about now</source>
   <translation>Erste Eier von {batch} um diese Zeit</translation>
  </message>
  <message>
   <source>First pips may show; look through the window, do not open. Brooder warm and dry by tonight.</source>
   <translation>Erste Picklöcher können sich zeigen; durchs Fenster schauen, nicht öffnen. Aufzuchtbox bis heute Abend warm und trocken.</translation>
  </message>
  <message>
   <source>Fresh dust bath in {place}</source>
   <translation>Frisches Staubbad in {place}</translation>
  </message>
  <message>
   <source>From starter to grower feed, {batch}</source>
   <translation>Von Starter- zu Aufzuchtfutter, {batch}</translation>
  </message>
  <message>
   <source>Hang the lamp a little higher, at least {height} from the bedding. They should spread out, not huddle (cold) or pant at the walls (hot).</source>
   <translation>Die Lampe etwas höher hängen, mindestens {height} über der Einstreu. Sie sollen sich verteilen, nicht drängen (kalt) oder am Rand hecheln (heiß).</translation>
  </message>
  <message>
   <source>Hatch day, {batch}</source>
   <translation>Schlupftag, {batch}</translation>
  </message>
  <message>
   <source>Hatch watch, {batch}</source>
   <translation>Auf den Schlupf achten, {batch}</translation>
  </message>
  <message>
   <source>Heat down to {warm} for {batch}</source>
   <translation>Wärme auf {warm} senken, {batch}</translation>
  </message>
  <message>
   <source>Heat off by day, cooler air each day, back on if they huddle; fully used to nights by the move.</source>
   <translation>Tagsüber Wärme aus, jeden Tag kühlere Luft, wieder an, wenn sie sich drängen; bis zum Umzug ganz an die Nächte gewöhnt.</translation>
  </message>
  <message>
   <source>Heat off for {batch}</source>
   <translation>Wärme aus, {batch}</translation>
  </message>
  <message>
   <source>In the evening, calmly, in the dim.</source>
   <translation>Am Abend, in Ruhe, im Halbdunkel.</translation>
  </message>
  <message>
   <source>In the morning, feed and water first. Keep the old drinker beside the new one for {days}; corners filled, low cover in.</source>
   <translation>Am Morgen, zuerst Futter und Wasser. Die alte Tränke bleibt neben der neuen: {days}; Ecken ausgefüllt, niedrige Deckung drin.</translation>
  </message>
  <message>
   <source>Keep one cock for {hens} hens, the calm ones; the rest go before they fight.</source>
   <translation>Einen Hahn für {hens} Hennen behalten, die ruhigen; der Rest geht, bevor gekämpft wird.</translation>
  </message>
  <message>
   <source>Keep them apart from the flock for {days}, see to them last, water first.</source>
   <translation>Vom Bestand getrennt halten ({days}), zuletzt versorgen, Wasser zuerst.</translation>
  </message>
  <message>
   <source>Lay them flat, humidity to {humidity} %, then keep the lid shut.</source>
   <translation>Flach legen, Luftfeuchte auf {humidity} %, dann den Deckel zulassen.</translation>
  </message>
  <message>
   <source>Layer feed with {protein} % protein, grit and a quiet corner to lay in.</source>
   <translation>Legefutter mit {protein} % Eiweiß, Grit und eine ruhige Ecke zum Legen.</translation>
  </message>
  <message>
   <source>Light to {hours} hours for {batch}</source>
   <translation>Licht auf {hours} Stunden, {batch}</translation>
  </message>
  <message>
   <source>Look and smell first: dry and sweet can wait, damp or sharp cannot.</source>
   <translation>Erst schauen und riechen: trocken und frisch kann warten, feucht oder scharf nicht.</translation>
  </message>
  <message>
   <source>Machine steady at {warm} (forced air) and {humidity} % humidity. Points down, leave out cracked and dirty ones. This is day 0.</source>
   <translation>Gerät beständig bei {warm} (bewegte Luft) und {humidity} % Luftfeuchte. Spitze nach unten, angeschlagene und schmutzige weglassen. Das ist Tag 0.</translation>
  </message>
  <message>
   <source>Mix over three days; starter has {starter} % protein, grower {grower} %.</source>
   <translation>Über drei Tage mischen; Starterfutter hat {starter} % Eiweiß, Aufzuchtfutter {grower} %.</translation>
  </message>
  <message>
   <source>Move the chicks of {batch} to {place}</source>
   <translation>Küken von {batch} nach {place} umsetzen</translation>
  </message>
  <message>
   <source>Move them to {place}. Lay them flat, humidity to {humidity} %, then keep the lid shut.</source>
   <translation>Nach {place} umlegen. Flach legen, Luftfeuchte auf {humidity} %, dann den Deckel zulassen.</translation>
  </message>
  <message>
   <source>Move {cocks} of {batch} to {place}</source>
   <translation>{cocks} von {batch} nach {place}</translation>
  </message>
  <message>
   <source>Move {place} to fresh grass</source>
   <translation>{place} auf frisches Gras versetzen</translation>
  </message>
  <message>
   <source>Move {who} from {old} to {new}</source>
   <translation>Umsetzen: {who}, {old} → {new}</translation>
  </message>
  <message>
   <source>Move {who} out to {place}</source>
   <translation>Hinaus nach {place}: {who}</translation>
  </message>
  <message>
   <source>No feed the evening before, water until then; about {weight} g live each. Chill at once to 4 °C or below.</source>
   <translation>Am Abend davor kein Futter, Wasser bis zuletzt; lebend etwa {weight} g je Tier. Sofort auf 4 °C oder kälter kühlen.</translation>
  </message>
  <message>
   <source>Old drinker out, {batch}</source>
   <translation>Alte Tränke hinaus, {batch}</translation>
  </message>
  <message>
   <source>Only if all of them drink from the new one.</source>
   <translation>Nur wenn alle aus der neuen trinken.</translation>
  </message>
  <message>
   <source>Only if none has been ill; else ask a vet first.</source>
   <translation>Nur wenn keiner krank war; sonst erst einen Tierarzt fragen.</translation>
  </message>
  <message>
   <source>Pebbles out of the drinkers of {batch}</source>
   <translation>Kiesel aus den Tränken von {batch}</translation>
  </message>
  <message>
   <source>Process {birds} of {batch}</source>
   <translation>Schlachten: {birds} von {batch}</translation>
  </message>
  <message>
   <source>Quarantine of {batch} ends</source>
   <translation>Quarantäne von {batch} endet</translation>
  </message>
  <message>
   <source>Rest the shipped eggs of {batch}</source>
   <translation>Verschickte Eier von {batch} ruhen lassen</translation>
  </message>
  <message>
   <source>Set {eggs} of {batch}</source>
   <translation>{eggs} von {batch} einlegen</translation>
  </message>
  <message>
   <source>Sex {batch} by breast feathers</source>
   <translation>Geschlecht von {batch} an der Brust bestimmen</translation>
  </message>
  <message>
   <source>Shells and fluff out, wash, disinfect, dry and air for {days} before the next come in.</source>
   <translation>Schalen und Flaum hinaus, waschen, desinfizieren, trocknen und lüften, bevor die nächsten kommen: {days}.</translation>
  </message>
  <message>
   <source>Stand {eggs} points down, still and cool, for {days} before setting.</source>
   <translation>{eggs} mit der Spitze nach unten, still und kühl, vor dem Einlegen: {days}.</translation>
  </message>
  <message>
   <source>Start hardening off {batch}</source>
   <translation>Mit dem Abhärten von {batch} beginnen</translation>
  </message>
  <message>
   <source>Stop turning the eggs of {batch}, raise humidity</source>
   <translation>Eier von {batch} nicht mehr wenden, Luftfeuchte erhöhen</translation>
  </message>
  <message>
   <source>Take out the clear ones and those with a ring of blood; write down how many.</source>
   <translation>Klare und solche mit Blutring herausnehmen; aufschreiben, wie viele.</translation>
  </message>
  <message>
   <source>Turn the eggs of {batch} {times}</source>
   <translation>Eier von {batch} wenden: {times}</translation>
  </message>
  <message>
   <source>Twice on warm days, cracked ones out; write down how many.</source>
   <translation>An warmen Tagen zweimal, angeschlagene heraus; aufschreiben, wie viele.</translation>
  </message>
  <message>
   <source>Walk it slowly with the birds in sight; look for legs under the edge, close gaps in the ground.</source>
   <translation>Langsam schieben, die Vögel im Blick; auf Beine unter dem Rand achten, Lücken am Boden schließen.</translation>
  </message>
  <message>
   <source>arrive</source>
   <translation>Ankunft</translation>
  </message>
  <message>
   <source>candle</source>
   <translation>schieren</translation>
  </message>
  <message>
   <source>clean-out</source>
   <translation>Ausmisten</translation>
  </message>
  <message>
   <source>cocks out</source>
   <translation>Hähne hinaus</translation>
  </message>
  <message>
   <source>collect</source>
   <translation>einsammeln</translation>
  </message>
  <message>
   <source>drain</source>
   <translation>Wasser leeren</translation>
  </message>
  <message>
   <source>dressed g</source>
   <translation>geschlachtet g</translation>
  </message>
  <message>
   <source>dust bath</source>
   <translation>Staubbad</translation>
  </message>
  <message>
   <source>feed switch</source>
   <translation>Futterwechsel</translation>
  </message>
  <message>
   <source>first eggs</source>
   <translation>erste Eier</translation>
  </message>
  <message>
   <source>grass</source>
   <translation>Wiese</translation>
  </message>
  <message>
   <source>harden</source>
   <translation>abhärten</translation>
  </message>
  <message>
   <source>hatch</source>
   <translation>Schlupf</translation>
  </message>
  <message>
   <source>heat</source>
   <translation>Wärme</translation>
  </message>
  <message>
   <source>heat off</source>
   <translation>Wärme aus</translation>
  </message>
  <message>
   <source>light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <source>live g</source>
   <translation>lebend g</translation>
  </message>
  <message>
   <source>move</source>
   <translation>umsetzen</translation>
  </message>
  <message>
   <source>move out</source>
   <translation>hinaus</translation>
  </message>
  <message>
   <source>not hatched</source>
   <translation>nicht geschlüpft</translation>
  </message>
  <message>
   <source>old drinker</source>
   <translation>alte Tränke</translation>
  </message>
  <message>
   <source>own chore</source>
   <translation>eigene Aufgabe</translation>
  </message>
  <message>
   <source>pebbles</source>
   <translation>Kiesel</translation>
  </message>
  <message>
   <source>process</source>
   <translation>schlachten</translation>
  </message>
  <message>
   <source>quarantine</source>
   <translation>Quarantäne</translation>
  </message>
  <message>
   <source>rest</source>
   <translation>ruhen</translation>
  </message>
  <message>
   <source>sex</source>
   <translation>Geschlecht bestimmen</translation>
  </message>
  <message>
   <source>the laying group of {batch}</source>
   <translation>Legegruppe von {batch}</translation>
  </message>
  <message>
   <source>the surplus cocks of {batch}</source>
   <translation>überzählige Hähne von {batch}</translation>
  </message>
  <message>
   <source>time</source>
   <translation>Mal</translation>
  </message>
  <message>
   <source>times</source>
   <translation>Mal</translation>
  </message>
  <message>
   <source>to brooder</source>
   <translation>in die Aufzuchtbox</translation>
  </message>
  <message>
   <source>turn</source>
   <translation>wenden</translation>
  </message>
  <message>
   <source>unsure</source>
   <translation>unsicher</translation>
  </message>
  <message>
   <source>{batch} comes: {birds}</source>
   <translation>{batch} kommt: {birds}</translation>
  </message>
  <message>
   <source>{birds} of {batch} go to their buyer</source>
   <translation>Zum Käufer: {birds} von {batch}</translation>
  </message>
  <message>
   <source>{number} chicks hatched. Leave them in until dry and fluffy.</source>
   <translation>{number} Küken geschlüpft. Drin lassen, bis sie trocken und flauschig sind.</translation>
  </message>
 </context>
</TS>
