<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>A heavier strain, first try.</source>
   <translation>Ein schwererer Stamm, erster Versuch.</translation>
  </message>
  <message>
   <source>An example. Change what you like, or begin your own with Farm › New farm.</source>
   <translation>Ein Beispiel. Alles darf geändert werden; der eigene Hof beginnt mit Hof › Neuer Hof.</translation>
  </message>
  <message>
   <source>Apr</source>
   <translation>Apr</translation>
  </message>
  <message>
   <source>Aug</source>
   <translation>Aug</translation>
  </message>
  <message>
   <source>Bench setter</source>
   <translation>Tischbrüter</translation>
  </message>
  <message>
   <source>Dec</source>
   <translation>Dez</translation>
  </message>
  <message>
   <source>Feb</source>
   <translation>Feb</translation>
  </message>
  <message>
   <source>Fri</source>
   <translation>Fr</translation>
  </message>
  <message>
   <source>Friday</source>
   <translation>Freitag</translation>
  </message>
  <message>
   <source>Grass ark</source>
   <translation>Wiesenarche</translation>
  </message>
  <message>
   <source>Hatching tray</source>
   <translation>Schlupfhorde</translation>
  </message>
  <message>
   <source>Jan</source>
   <translation>Jan</translation>
  </message>
  <message>
   <source>Jul</source>
   <translation>Jul</translation>
  </message>
  <message>
   <source>Jun</source>
   <translation>Jun</translation>
  </message>
  <message>
   <source>Long run</source>
   <translation>Gartenvoliere</translation>
  </message>
  <message>
   <source>Mar</source>
   <translation>Mär</translation>
  </message>
  <message>
   <source>May</source>
   <translation>Mai</translation>
  </message>
  <message>
   <source>Mon</source>
   <translation>Mo</translation>
  </message>
  <message>
   <source>Monday</source>
   <translation>Montag</translation>
  </message>
  <message>
   <source>Nov</source>
   <translation>Nov</translation>
  </message>
  <message>
   <source>Oct</source>
   <translation>Okt</translation>
  </message>
  <message>
   <source>Old cabinet</source>
   <translation>Brutschrank</translation>
  </message>
  <message>
   <source>Roof and netting still to do; a lamp on a timer hangs already.</source>
   <translation>Dach und Netz fehlen noch; eine Lampe mit Schaltuhr hängt schon.</translation>
  </message>
  <message>
   <source>Sat</source>
   <translation>Sa</translation>
  </message>
  <message>
   <source>Saturday</source>
   <translation>Samstag</translation>
  </message>
  <message>
   <source>Sep</source>
   <translation>Sep</translation>
  </message>
  <message>
   <source>Shed brooder</source>
   <translation>Schuppenbox</translation>
  </message>
  <message>
   <source>Sun</source>
   <translation>So</translation>
  </message>
  <message>
   <source>Sunday</source>
   <translation>Sonntag</translation>
  </message>
  <message>
   <source>Thu</source>
   <translation>Do</translation>
  </message>
  <message>
   <source>Thursday</source>
   <translation>Donnerstag</translation>
  </message>
  <message>
   <source>Tub brooder</source>
   <translation>Wannenbox</translation>
  </message>
  <message>
   <source>Tue</source>
   <translation>Di</translation>
  </message>
  <message>
   <source>Tuesday</source>
   <translation>Dienstag</translation>
  </message>
  <message>
   <source>Two weeks on grass after the cocks are parted.</source>
   <translation>Zwei Wochen auf der Wiese, nachdem die Hähne getrennt sind.</translation>
  </message>
  <message>
   <source>Wed</source>
   <translation>Mi</translation>
  </message>
  <message>
   <source>Wednesday</source>
   <translation>Mittwoch</translation>
  </message>
  <message>
   <source>a day as year-month-day, such as 2027-02-28,</source>
   <translation>ein Tag als Jahr-Monat-Tag, etwa 2027-02-28</translation>
  </message>
  <message>
   <source>a day from {earliest} to {latest} is accepted</source>
   <translation>angenommen wird ein Tag von {earliest} bis {latest}</translation>
  </message>
  <message>
   <source>a farm replaces each figure once</source>
   <translation>ein Hof ersetzt jeden Richtwert einmal</translation>
  </message>
  <message>
   <source>a group of fields in curly brackets</source>
   <translation>eine Gruppe von Feldern in geschweiften Klammern</translation>
  </message>
  <message>
   <source>a group of fields stands here</source>
   <translation>hier steht eine Gruppe von Feldern</translation>
  </message>
  <message>
   <source>a list in square brackets</source>
   <translation>eine Liste in eckigen Klammern</translation>
  </message>
  <message>
   <source>a list of {number} values</source>
   <translation>eine Liste mit {number} Werten</translation>
  </message>
  <message>
   <source>a list of {values}</source>
   <translation>eine Liste ({values})</translation>
  </message>
  <message>
   <source>a list stands here</source>
   <translation>hier steht eine Liste</translation>
  </message>
  <message>
   <source>a moment with its offset, such as 2027-02-28T07:30:00+00:00,</source>
   <translation>ein Zeitpunkt mit Zeitzone, etwa 2027-02-28T07:30:00+00:00</translation>
  </message>
  <message>
   <source>a name of at least one letter is needed</source>
   <translation>nötig ist ein Name von mindestens einem Buchstaben</translation>
  </message>
  <message>
   <source>a name of up to {most} letters is accepted</source>
   <translation>angenommen wird ein Name von höchstens {most} Buchstaben</translation>
  </message>
  <message>
   <source>a name on one line, without tabs, is accepted</source>
   <translation>angenommen wird ein Name in einer Zeile, ohne Tabulatoren</translation>
  </message>
  <message>
   <source>a number</source>
   <translation>eine Zahl</translation>
  </message>
  <message>
   <source>a number from {least} to {most} is accepted</source>
   <translation>angenommen wird eine Zahl von {least} bis {most}</translation>
  </message>
  <message>
   <source>a number of up to {most} digits</source>
   <translation>eine Zahl mit höchstens {most} Stellen</translation>
  </message>
  <message>
   <source>a reason of at least one letter is needed</source>
   <translation>nötig ist ein Grund von mindestens einem Buchstaben</translation>
  </message>
  <message>
   <source>a reason of up to {most} letters is accepted</source>
   <translation>angenommen wird ein Grund von höchstens {most} Buchstaben</translation>
  </message>
  <message>
   <source>a reason on one line, without tabs, is accepted</source>
   <translation>angenommen wird ein Grund in einer Zeile, ohne Tabulatoren</translation>
  </message>
  <message>
   <source>a rule of RFC 5545 by days, weeks, months or years, such as FREQ=WEEKLY;INTERVAL=2, is accepted</source>
   <translation>eine Regel nach RFC 5545 in Tagen, Wochen, Monaten oder Jahren wie FREQ=WEEKLY;INTERVAL=2 wird angenommen</translation>
  </message>
  <message>
   <source>a stay ends after the day it starts on</source>
   <translation>ein Aufenthalt endet nach dem Tag, an dem er beginnt</translation>
  </message>
  <message>
   <source>a trial has each record once</source>
   <translation>ein Versuch hat jeden Datensatz einmal</translation>
  </message>
  <message>
   <source>a version from 1 to {latest} is accepted</source>
   <translation>angenommen wird eine Version von 1 bis {latest}</translation>
  </message>
  <message>
   <source>a very long number</source>
   <translation>eine sehr lange Zahl</translation>
  </message>
  <message>
   <source>a whole number from {least} to {most} is accepted</source>
   <translation>angenommen wird eine ganze Zahl von {least} bis {most}</translation>
  </message>
  <message>
   <source>a whole number of up to {most} digits</source>
   <translation>eine ganze Zahl mit höchstens {most} Stellen</translation>
  </message>
  <message>
   <source>a {role} has egg places, no floor</source>
   <translation>{role}: hat Eiplätze, keine Fläche</translation>
  </message>
  <message>
   <source>a {role} has floor, no egg places</source>
   <translation>{role}: hat Fläche, keine Eiplätze</translation>
  </message>
  <message>
   <source>a {role} has none, so it is left empty</source>
   <translation>{role}: hat nichts davon, also bleibt es leer</translation>
  </message>
  <message>
   <source>accepted clash in a place that has gone</source>
   <translation>hingenommener Engpass an einem Platz, den es nicht mehr gibt</translation>
  </message>
  <message>
   <source>accepted clash in {place}</source>
   <translation>hingenommener Engpass in {place}</translation>
  </message>
  <message>
   <source>after school</source>
   <translation>nach der Schule</translation>
  </message>
  <message>
   <source>age in days</source>
   <translation>Alter in Tagen</translation>
  </message>
  <message>
   <source>all</source>
   <translation>alle</translation>
  </message>
  <message>
   <source>amount</source>
   <translation>Menge</translation>
  </message>
  <message>
   <source>another batch is accepted</source>
   <translation>ein anderer Satz wird angenommen</translation>
  </message>
  <message>
   <source>another count corrects it already, each is corrected once</source>
   <translation>eine andere Zählung berichtigt sie schon, jede wird einmal berichtigt</translation>
  </message>
  <message>
   <source>another {what} has it already, each needs its own</source>
   <translation>der Name ist schon vergeben ({what}), jeder braucht seinen eigenen</translation>
  </message>
  <message>
   <source>at least the place of its first day is needed</source>
   <translation>nötig ist mindestens der Platz des ersten Tages</translation>
  </message>
  <message>
   <source>away</source>
   <translation>abwesend</translation>
  </message>
  <message>
   <source>batch</source>
   <translation>Satz</translation>
  </message>
  <message>
   <source>batch {name}</source>
   <translation>Satz {name}</translation>
  </message>
  <message>
   <source>batches</source>
   <translation>Sätze</translation>
  </message>
  <message>
   <source>bedding</source>
   <translation>Einstreu</translation>
  </message>
  <message>
   <source>between -60 and 40 °C is accepted</source>
   <translation>angenommen wird -60 bis 40 °C</translation>
  </message>
  <message>
   <source>between -90 and 90 degrees is accepted</source>
   <translation>angenommen wird -90 bis 90 Grad</translation>
  </message>
  <message>
   <source>bird</source>
   <translation>Vogel</translation>
  </message>
  <message>
   <source>birds</source>
   <translation>Vögel</translation>
  </message>
  <message>
   <source>birds brought in</source>
   <translation>hereingebrachte Vögel</translation>
  </message>
  <message>
   <source>birds start on a floor</source>
   <translation>Vögel beginnen auf einer Fläche</translation>
  </message>
  <message>
   <source>birds that were brought in have no stored eggs: 0 is accepted</source>
   <translation>hereingebrachte Vögel haben keine gelagerten Eier: angenommen wird 0</translation>
  </message>
  <message>
   <source>bought birds</source>
   <translation>gekaufte Vögel</translation>
  </message>
  <message>
   <source>brooder</source>
   <translation>Aufzuchtbox</translation>
  </message>
  <message>
   <source>built</source>
   <translation>fertig gebaut</translation>
  </message>
  <message>
   <source>cabinet</source>
   <translation>Kombibrüter</translation>
  </message>
  <message>
   <source>cause</source>
   <translation>Ursache</translation>
  </message>
  <message>
   <source>chilled</source>
   <translation>ausgekühlt</translation>
  </message>
  <message>
   <source>chore</source>
   <translation>Aufgabe</translation>
  </message>
  <message>
   <source>chore mark</source>
   <translation>Vermerk zur Aufgabe</translation>
  </message>
  <message>
   <source>chore {name}</source>
   <translation>Aufgabe {name}</translation>
  </message>
  <message>
   <source>clean-out days</source>
   <translation>Tage zum Ausmisten</translation>
  </message>
  <message>
   <source>clear</source>
   <translation>klar</translation>
  </message>
  <message>
   <source>cocks</source>
   <translation>Hähne</translation>
  </message>
  <message>
   <source>corrects</source>
   <translation>berichtigt</translation>
  </message>
  <message>
   <source>counted</source>
   <translation>gezählt</translation>
  </message>
  <message>
   <source>culled</source>
   <translation>getötet</translation>
  </message>
  <message>
   <source>day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>day {first} to day {last}</source>
   <translation>Tag {first} bis Tag {last}</translation>
  </message>
  <message>
   <source>days the eggs were stored</source>
   <translation>Lagertage der Eier</translation>
  </message>
  <message>
   <source>died</source>
   <translation>gestorben</translation>
  </message>
  <message>
   <source>drinker space in cm</source>
   <translation>Tränkenbreite in cm</translation>
  </message>
  <message>
   <source>drowned</source>
   <translation>ertrunken</translation>
  </message>
  <message>
   <source>egg</source>
   <translation>Ei</translation>
  </message>
  <message>
   <source>egg places</source>
   <translation>Eiplätze</translation>
  </message>
  <message>
   <source>eggs</source>
   <translation>Eier</translation>
  </message>
  <message>
   <source>eggs have no age as birds: 0 is accepted</source>
   <translation>Eier haben kein Alter wie Vögel: angenommen wird 0</translation>
  </message>
  <message>
   <source>eggs set</source>
   <translation>eingelegte Eier</translation>
  </message>
  <message>
   <source>eggs start where eggs are held</source>
   <translation>Eier beginnen an einem Platz für Eier</translation>
  </message>
  <message>
   <source>family visit</source>
   <translation>Familienbesuch</translation>
  </message>
  <message>
   <source>farm</source>
   <translation>Hof</translation>
  </message>
  <message>
   <source>farm {name}</source>
   <translation>Hof {name}</translation>
  </message>
  <message>
   <source>feathered</source>
   <translation>befiedert</translation>
  </message>
  <message>
   <source>fed</source>
   <translation>gefüttert</translation>
  </message>
  <message>
   <source>feed bought</source>
   <translation>Futter gekauft</translation>
  </message>
  <message>
   <source>feeder space in cm</source>
   <translation>Fressplatzbreite in cm</translation>
  </message>
  <message>
   <source>figure {name}</source>
   <translation>Richtwert {name}</translation>
  </message>
  <message>
   <source>figures of {kind}</source>
   <translation>Richtwerte von {kind}</translation>
  </message>
  <message>
   <source>file</source>
   <translation>Datei</translation>
  </message>
  <message>
   <source>first day</source>
   <translation>erster Tag</translation>
  </message>
  <message>
   <source>first place</source>
   <translation>erster Platz</translation>
  </message>
  <message>
   <source>first the stays of all, then of the hens, then of the cocks</source>
   <translation>erst die Aufenthalte aller, dann die der Hennen, dann die der Hähne</translation>
  </message>
  <message>
   <source>floor</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <source>floor in cm²</source>
   <translation>Fläche in cm²</translation>
  </message>
  <message>
   <source>fought</source>
   <translation>im Streit</translation>
  </message>
  <message>
   <source>grams</source>
   <translation>Gramm</translation>
  </message>
  <message>
   <source>grams dressed</source>
   <translation>Gramm Schlachtgewicht</translation>
  </message>
  <message>
   <source>grass pen</source>
   <translation>Wiesenvoliere</translation>
  </message>
  <message>
   <source>hatched</source>
   <translation>geschlüpft</translation>
  </message>
  <message>
   <source>hatcher</source>
   <translation>Schlupfbrüter</translation>
  </message>
  <message>
   <source>heat sources</source>
   <translation>Wärmequellen</translation>
  </message>
  <message>
   <source>hens</source>
   <translation>Hennen</translation>
  </message>
  <message>
   <source>hens and cocks</source>
   <translation>Hennen und Hähne</translation>
  </message>
  <message>
   <source>holiday</source>
   <translation>Urlaub</translation>
  </message>
  <message>
   <source>hour</source>
   <translation>Stunde</translation>
  </message>
  <message>
   <source>hours of building a week</source>
   <translation>Baustunden die Woche</translation>
  </message>
  <message>
   <source>hours of light a day</source>
   <translation>Lichtstunden am Tag</translation>
  </message>
  <message>
   <source>hours of work left</source>
   <translation>verbleibende Arbeitsstunden</translation>
  </message>
  <message>
   <source>how sure</source>
   <translation>wie sicher</translation>
  </message>
  <message>
   <source>hurt</source>
   <translation>verletzt</translation>
  </message>
  <message>
   <source>in</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <source>it is empty</source>
   <translation>ist leer</translation>
  </message>
  <message>
   <source>it is empty (null)</source>
   <translation>ist leer (null)</translation>
  </message>
  <message>
   <source>it is missing</source>
   <translation>es fehlt</translation>
  </message>
  <message>
   <source>it leaves a gap: day {day} is accepted</source>
   <translation>es bleibt eine Lücke: angenommen wird Tag {day}</translation>
  </message>
  <message>
   <source>it moved to {place} on {day}; what happened stays, correct the count instead</source>
   <translation>am {day} kam er nach {place}; was geschehen ist, bleibt, stattdessen die Zählung berichtigen</translation>
  </message>
  <message>
   <source>it overlaps the one before: day {day} is accepted</source>
   <translation>er überschneidet sich mit dem davor: angenommen wird Tag {day}</translation>
  </message>
  <message>
   <source>it stands in the place of itself by that, the id of a count before it is accepted</source>
   <translation>sie stünde so an ihrer eigenen Stelle, angenommen wird die id einer Zählung vor ihr</translation>
  </message>
  <message>
   <source>item {number}</source>
   <translation>Eintrag {number}</translation>
  </message>
  <message>
   <source>its content is something else</source>
   <translation>der Inhalt ist etwas anderes</translation>
  </message>
  <message>
   <source>joined</source>
   <translation>zu anderen gekommen</translation>
  </message>
  <message>
   <source>key</source>
   <translation>Schlüssel</translation>
  </message>
  <message>
   <source>kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>laid</source>
   <translation>gelegt</translation>
  </message>
  <message>
   <source>latitude</source>
   <translation>geografische Breite</translation>
  </message>
  <message>
   <source>leaving</source>
   <translation>Abgang</translation>
  </message>
  <message>
   <source>missing</source>
   <translation>vermisst</translation>
  </message>
  <message>
   <source>moved</source>
   <translation>umgesetzt</translation>
  </message>
  <message>
   <source>name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>night lows</source>
   <translation>Nachttiefs</translation>
  </message>
  <message>
   <source>no day is given</source>
   <translation>kein Tag ist angegeben</translation>
  </message>
  <message>
   <source>not more than the live weight of {grams} g is accepted</source>
   <translation>nicht mehr als das Lebendgewicht von {grams} g wird angenommen</translation>
  </message>
  <message>
   <source>note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>number</source>
   <translation>Zahl</translation>
  </message>
  <message>
   <source>of {number} birds up to {number} are hens or cocks</source>
   <translation>von {number} Vögeln sind bis zu {number} Hennen oder Hähne</translation>
  </message>
  <message>
   <source>of {set} set, {left} were left by then</source>
   <translation>von {set}, die eingelegt wurden, waren da noch {left} übrig</translation>
  </message>
  <message>
   <source>one of {choices}</source>
   <translation>eins von: {choices}</translation>
  </message>
  <message>
   <source>one of {choices} is accepted</source>
   <translation>angenommen wird eins von: {choices}</translation>
  </message>
  <message>
   <source>only a last stay that ends may say where its birds go</source>
   <translation>nur ein letzter Aufenthalt, der endet, darf sagen, wohin seine Vögel gehen</translation>
  </message>
  <message>
   <source>only the last stay may be open: a day is needed</source>
   <translation>nur der letzte Aufenthalt darf offen sein: nötig ist ein Tag</translation>
  </message>
  <message>
   <source>open</source>
   <translation>offen</translation>
  </message>
  <message>
   <source>other batch</source>
   <translation>anderer Satz</translation>
  </message>
  <message>
   <source>out of use</source>
   <translation>außer Betrieb</translation>
  </message>
  <message>
   <source>own eggs</source>
   <translation>eigene Eier</translation>
  </message>
  <message>
   <source>parted</source>
   <translation>abgeteilt</translation>
  </message>
  <message>
   <source>pen</source>
   <translation>Voliere</translation>
  </message>
  <message>
   <source>person</source>
   <translation>Person</translation>
  </message>
  <message>
   <source>person {name}</source>
   <translation>Person {name}</translation>
  </message>
  <message>
   <source>photo</source>
   <translation>Foto</translation>
  </message>
  <message>
   <source>pipped</source>
   <translation>angepickt</translation>
  </message>
  <message>
   <source>place</source>
   <translation>Platz</translation>
  </message>
  <message>
   <source>place of a stay</source>
   <translation>Platz eines Aufenthalts</translation>
  </message>
  <message>
   <source>place {name}</source>
   <translation>Platz {name}</translation>
  </message>
  <message>
   <source>processed</source>
   <translation>geschlachtet</translation>
  </message>
  <message>
   <source>quit</source>
   <translation>abgestorben</translation>
  </message>
  <message>
   <source>ready on</source>
   <translation>fertig am</translation>
  </message>
  <message>
   <source>reason</source>
   <translation>Grund</translation>
  </message>
  <message>
   <source>record</source>
   <translation>Datensatz</translation>
  </message>
  <message>
   <source>records</source>
   <translation>Datensätze</translation>
  </message>
  <message>
   <source>repeat</source>
   <translation>Wiederholung</translation>
  </message>
  <message>
   <source>school trip</source>
   <translation>Klassenfahrt</translation>
  </message>
  <message>
   <source>set</source>
   <translation>eingelegt</translation>
  </message>
  <message>
   <source>setter</source>
   <translation>Vorbrüter</translation>
  </message>
  <message>
   <source>sexed</source>
   <translation>nach Geschlecht bestimmt</translation>
  </message>
  <message>
   <source>shipped eggs</source>
   <translation>verschickte Eier</translation>
  </message>
  <message>
   <source>sick</source>
   <translation>krank</translation>
  </message>
  <message>
   <source>smothered</source>
   <translation>erdrückt</translation>
  </message>
  <message>
   <source>sold</source>
   <translation>verkauft</translation>
  </message>
  <message>
   <source>sort</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>sq ft</source>
   <translation>Quadratfuß</translation>
  </message>
  <message>
   <source>start</source>
   <translation>Beginn</translation>
  </message>
  <message>
   <source>stay</source>
   <translation>Aufenthalt</translation>
  </message>
  <message>
   <source>stay from day</source>
   <translation>Aufenthalt von Tag</translation>
  </message>
  <message>
   <source>stay to day</source>
   <translation>Aufenthalt bis Tag</translation>
  </message>
  <message>
   <source>stays</source>
   <translation>Aufenthalte</translation>
  </message>
  <message>
   <source>taken</source>
   <translation>gerissen</translation>
  </message>
  <message>
   <source>text in quotation marks</source>
   <translation>Text in Anführungszeichen</translation>
  </message>
  <message>
   <source>text of letters that can be written to a file</source>
   <translation>Text aus Zeichen, die in eine Datei geschrieben werden können</translation>
  </message>
  <message>
   <source>the JSON text of a record is accepted</source>
   <translation>angenommen wird der JSON-Text eines Datensatzes</translation>
  </message>
  <message>
   <source>the JSON text of a record with this id is needed</source>
   <translation>nötig ist der JSON-Text eines Datensatzes mit dieser Kennung</translation>
  </message>
  <message>
   <source>the day on which the hours of work were counted is needed</source>
   <translation>nötig ist der Tag, an dem die Arbeitsstunden gezählt wurden</translation>
  </message>
  <message>
   <source>the end is the first day after, so it lies after the start</source>
   <translation>das Ende ist der erste Tag danach, liegt also nach dem Beginn</translation>
  </message>
  <message>
   <source>the id of a batch is needed</source>
   <translation>nötig ist die Kennung eines Satzes</translation>
  </message>
  <message>
   <source>the id of a count of the same sort, of the same batch, is accepted</source>
   <translation>die id einer Zählung derselben Art, vom selben Satz, wird angenommen</translation>
  </message>
  <message>
   <source>the id of a place is needed</source>
   <translation>nötig ist die Kennung eines Platzes</translation>
  </message>
  <message>
   <source>the id of a place of this farm is accepted</source>
   <translation>angenommen wird die Kennung eines Platzes dieses Hofs</translation>
  </message>
  <message>
   <source>the id of a record is needed</source>
   <translation>nötig ist die Kennung eines Datensatzes</translation>
  </message>
  <message>
   <source>the id of a record of this farm is accepted</source>
   <translation>angenommen wird die Kennung eines Datensatzes dieses Hofs</translation>
  </message>
  <message>
   <source>the id of at least one batch is needed</source>
   <translation>nötig ist die Kennung mindestens eines Satzes</translation>
  </message>
  <message>
   <source>the key of a chore is needed</source>
   <translation>der Schlüssel einer Aufgabe ist nötig</translation>
  </message>
  <message>
   <source>the name of a file in the farm's folder of photos is accepted</source>
   <translation>der Name einer Datei im Fotoordner des Hofs wird angenommen</translation>
  </message>
  <message>
   <source>the plan says otherwise</source>
   <translation>der Plan sagt es anders</translation>
  </message>
  <message>
   <source>the word for a kind of clash is needed</source>
   <translation>nötig ist das Wort für eine Art von Engpass</translation>
  </message>
  <message>
   <source>there are none</source>
   <translation>es gibt keine</translation>
  </message>
  <message>
   <source>there is no such day; year-month-day as in 2027-02-28 is accepted</source>
   <translation>diesen Tag gibt es nicht; angenommen wird Jahr-Monat-Tag wie 2027-02-28</translation>
  </message>
  <message>
   <source>there is no such field here, only {fields}</source>
   <translation>dieses Feld gibt es hier nicht, nur {fields}</translation>
  </message>
  <message>
   <source>this field is missing</source>
   <translation>dieses Feld fehlt</translation>
  </message>
  <message>
   <source>trial</source>
   <translation>Versuch</translation>
  </message>
  <message>
   <source>trial {name}</source>
   <translation>Versuch {name}</translation>
  </message>
  <message>
   <source>true or false</source>
   <translation>true oder false</translation>
  </message>
  <message>
   <source>twelve night lows are needed, January to December, or none</source>
   <translation>nötig sind zwölf Nachttiefs, Januar bis Dezember, oder keins</translation>
  </message>
  <message>
   <source>unknown</source>
   <translation>unbekannt</translation>
  </message>
  <message>
   <source>up to day {most} is accepted</source>
   <translation>angenommen wird höchstens Tag {most}</translation>
  </message>
  <message>
   <source>up to {most} letters are accepted</source>
   <translation>bis zu {most} Zeichen werden angenommen</translation>
  </message>
  <message>
   <source>value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>values</source>
   <translation>Werte</translation>
  </message>
  <message>
   <source>version</source>
   <translation>Version</translation>
  </message>
  <message>
   <source>weak</source>
   <translation>schwach</translation>
  </message>
  <message>
   <source>weighed</source>
   <translation>gewogen</translation>
  </message>
  <message>
   <source>what is taken back is needed</source>
   <translation>nötig ist, was zurückgenommen wird</translation>
  </message>
  <message>
   <source>which birds</source>
   <translation>welche Vögel</translation>
  </message>
  <message>
   <source>words</source>
   <translation>Worte</translation>
  </message>
  <message>
   <source>work counted on</source>
   <translation>Arbeit gezählt am</translation>
  </message>
  <message>
   <source>{accepted}, or null</source>
   <translation>{accepted}, oder null</translation>
  </message>
  <message>
   <source>{batch} came as birds: it has no eggs in a machine</source>
   <translation>{batch} kam als Vögel: Er hat keine Eier in einem Brüter</translation>
  </message>
  <message>
   <source>{batch} came on {day}: that day or a later one is accepted</source>
   <translation>{batch} kam am {day}: Dieser Tag oder ein späterer wird angenommen</translation>
  </message>
  <message>
   <source>{batch} had {birds} by then</source>
   <translation>{batch} hatte da {birds}</translation>
  </message>
  <message>
   <source>{batch} was set on {day}: that day or a later one is accepted</source>
   <translation>{batch} wurde am {day} eingelegt: Dieser Tag oder ein späterer wird angenommen</translation>
  </message>
  <message>
   <source>{birds} on {day}</source>
   <translation>{birds} am {day}</translation>
  </message>
  <message>
   <source>{birds} parted from {batch} on {day}; what happened stays</source>
   <translation>{birds} wurden am {day} von {batch} abgeteilt; was geschehen ist, bleibt</translation>
  </message>
  <message>
   <source>{eggs} on {day}</source>
   <translation>{eggs} am {day}</translation>
  </message>
  <message>
   <source>{eggs} were set on {day}; what happened stays, correct the count instead</source>
   <translation>{eggs} wurden am {day} eingelegt; was geschehen ist, bleibt, stattdessen die Zählung berichtigen</translation>
  </message>
  <message>
   <source>{hours} hour</source>
   <translation>{hours} Stunde</translation>
  </message>
  <message>
   <source>{hours} hours</source>
   <translation>{hours} Stunden</translation>
  </message>
  <message>
   <source>{names} and {last}</source>
   <translation>{names} und {last}</translation>
  </message>
  <message>
   <source>{sort} needs it</source>
   <translation>{sort} braucht es</translation>
  </message>
  <message>
   <source>{sort} on {day}</source>
   <translation>{sort} am {day}</translation>
  </message>
  <message>
   <source>{start} to {end}</source>
   <translation>{start} bis {end}</translation>
  </message>
  <message>
   <source>{what} is accepted</source>
   <translation>angenommen wird {what}</translation>
  </message>
  <message>
   <source>{what} is needed</source>
   <translation>nötig ist {what}</translation>
  </message>
  <message>
   <source>{where}: {value} cannot be used; {accepted}.</source>
   <translation>{where}: {value} geht nicht; {accepted}.</translation>
  </message>
  <message>
   <source>{where}: {value}.</source>
   <translation>{where}: {value}.</translation>
  </message>
  <message>
   <source>{where}: {value}; {accepted}.</source>
   <translation>{where}: {value}; {accepted}.</translation>
  </message>
  <message>
   <source>{where}: “{value}” cannot be used; {accepted}.</source>
   <translation>{where}: „{value}“ geht nicht; {accepted}.</translation>
  </message>
 </context>
</TS>
