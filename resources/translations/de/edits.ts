<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source> or </source>
   <translation> oder </translation>
  </message>
  <message>
   <source>Accept {clash}</source>
   <translation>Hinnehmen: {clash}</translation>
  </message>
  <message>
   <source>Add {what}</source>
   <translation>Hinzufügen: {what}</translation>
  </message>
  <message>
   <source>Ask somebody to come on {day}</source>
   <translation>Jemanden bitten, am {day} zu kommen</translation>
  </message>
  <message>
   <source>Bring in {batch} on {day}</source>
   <translation>{batch} am {day} hereinbringen</translation>
  </message>
  <message>
   <source>Call the trial “{trial}”</source>
   <translation>Den Versuch „{trial}“ nennen</translation>
  </message>
  <message>
   <source>Change {what}</source>
   <translation>Ändern: {what}</translation>
  </message>
  <message>
   <source>Correct: {what}</source>
   <translation>Berichtigen: {what}</translation>
  </message>
  <message>
   <source>Done: {chore}</source>
   <translation>Erledigt: {chore}</translation>
  </message>
  <message>
   <source>Drinker space of {place}</source>
   <translation>Tränkenbreite von {place}</translation>
  </message>
  <message>
   <source>Drop trial “{trial}”</source>
   <translation>Versuch „{trial}“ verwerfen</translation>
  </message>
  <message>
   <source>Eggs of {day}</source>
   <translation>Eier vom {day}</translation>
  </message>
  <message>
   <source>Feeder space of {place}</source>
   <translation>Fressplatzbreite von {place}</translation>
  </message>
  <message>
   <source>Grown birds that do not know each other fight: put them together at dusk, in a place that is new to all, and look after an hour.</source>
   <translation>Erwachsene Vögel, die sich nicht kennen, kämpfen: in der Dämmerung zusammensetzen, an einem Platz, der allen neu ist, und nach einer Stunde nachsehen.</translation>
  </message>
  <message>
   <source>Keep trial “{trial}”</source>
   <translation>Versuch „{trial}“ übernehmen</translation>
  </message>
  <message>
   <source>Leave out: {chore}</source>
   <translation>Auslassen: {chore}</translation>
  </message>
  <message>
   <source>No longer accept {clashes}</source>
   <translation>Nicht mehr hinnehmen: {clashes}</translation>
  </message>
  <message>
   <source>Not done: {chore}</source>
   <translation>Nicht erledigt: {chore}</translation>
  </message>
  <message>
   <source>Part the cocks of {batch} on {day}</source>
   <translation>Die Hähne von {batch} am {day} trennen</translation>
  </message>
  <message>
   <source>Remove {what}</source>
   <translation>Entfernen: {what}</translation>
  </message>
  <message>
   <source>Sell {batch} when they leave</source>
   <translation>{batch} beim Auszug verkaufen</translation>
  </message>
  <message>
   <source>Set {batch} on {day}</source>
   <translation>{batch} am {day} einlegen</translation>
  </message>
  <message>
   <source>Split {batch}: {number} go to {place}</source>
   <translation>{batch} teilen: {number} kommen nach {place}</translation>
  </message>
  <message>
   <source>Stand-in on {day} {year}</source>
   <translation>Vertretung am {day} {year}</translation>
  </message>
  <message>
   <source>Start trial “{trial}”</source>
   <translation>Versuch „{trial}“ beginnen</translation>
  </message>
  <message>
   <source>Take back: {what}</source>
   <translation>Zurücknehmen: {what}</translation>
  </message>
  <message>
   <source>Take in {rows} of a table ({log})</source>
   <translation>{rows} einer Tabelle übernehmen ({log})</translation>
  </message>
  <message>
   <source>They are {gap} apart in age; up to {most} is usual.</source>
   <translation>Ihr Alter liegt {gap} auseinander; üblich ist bis zu {most}.</translation>
  </message>
  <message>
   <source>a batch of the same kind, {kind}, is accepted</source>
   <translation>ein Satz derselben Art, {kind}, wird angenommen</translation>
  </message>
  <message>
   <source>a count that holds is accepted: this one was corrected or taken back already</source>
   <translation>eine Zählung, die gilt, wird angenommen: Diese wurde schon berichtigt oder zurückgenommen</translation>
  </message>
  <message>
   <source>a day like 2027-04-06 or 6 Apr 2027 is accepted, figures alone with the {order}</source>
   <translation>ein Tag wie 2027-04-06 oder 6. Apr. 2027 wird angenommen, in Ziffern mit der Reihenfolge „{order}“</translation>
  </message>
  <message>
   <source>a farm keeps its one settings record</source>
   <translation>ein Hof behält seinen einen Datensatz mit Einstellungen</translation>
  </message>
  <message>
   <source>a farm keeps its settings</source>
   <translation>ein Hof behält seine Einstellungen</translation>
  </message>
  <message>
   <source>a hatch log needs headings for the day of setting and the eggs set, or for the batch</source>
   <translation>ein Brutbuch braucht Überschriften für den Tag des Einlegens und die eingelegten Eier, oder für den Satz</translation>
  </message>
  <message>
   <source>a new batch needs it</source>
   <translation>ein neuer Satz braucht das</translation>
  </message>
  <message>
   <source>a new batch needs it; the farm has none called “{name}”</source>
   <translation>ein neuer Satz braucht das; der Hof hat keinen namens „{name}“</translation>
  </message>
  <message>
   <source>a place that the plan no longer has</source>
   <translation>ein Platz, den der Plan nicht mehr hat</translation>
  </message>
  <message>
   <source>a row of headings such as day, batch, eggs set, clear, quit, hatched, or day, place, eggs, is accepted</source>
   <translation>eine Zeile mit Überschriften wie Tag, Satz, Eier eingelegt, klar, abgestorben, geschlüpft, oder Tag, Ort, Eier, wird angenommen</translation>
  </message>
  <message>
   <source>a table with commas, semicolons or tabs is accepted (a spreadsheet saves it as CSV)</source>
   <translation>eine Tabelle mit Kommas, Semikolons oder Tabulatoren wird angenommen (eine Tabellenkalkulation speichert sie als CSV)</translation>
  </message>
  <message>
   <source>a trial holds no trials</source>
   <translation>ein Versuch enthält keine Versuche</translation>
  </message>
  <message>
   <source>a weight with its unit in the cell or the heading is accepted: g, kg, oz or lb</source>
   <translation>ein Gewicht mit seiner Einheit in der Zelle oder der Überschrift wird angenommen: g, kg, oz oder lb</translation>
  </message>
  <message>
   <source>a whole number from 0 to {most} is accepted</source>
   <translation>eine ganze Zahl von 0 bis {most} wird angenommen</translation>
  </message>
  <message>
   <source>a word of why you live with it is needed</source>
   <translation>nötig ist ein Wort, warum du damit lebst</translation>
  </message>
  <message>
   <source>accept a clash</source>
   <translation>Engpass hinnehmen</translation>
  </message>
  <message>
   <source>accepted clash ({reason})</source>
   <translation>hingenommener Engpass ({reason})</translation>
  </message>
  <message>
   <source>an egg log needs headings for the day and for eggs, feed, deaths or weights</source>
   <translation>eine Legeliste braucht Überschriften für den Tag und für Eier, Futter, Verluste oder Gewichte</translation>
  </message>
  <message>
   <source>anybody</source>
   <translation>irgendwer</translation>
  </message>
  <message>
   <source>average weight</source>
   <translation>Durchschnittsgewicht</translation>
  </message>
  <message>
   <source>birds weighed</source>
   <translation>Tiere gewogen</translation>
  </message>
  <message>
   <source>candled on</source>
   <translation>geschiert am</translation>
  </message>
  <message>
   <source>cell</source>
   <translation>Zelle</translation>
  </message>
  <message>
   <source>cells</source>
   <translation>Zellen</translation>
  </message>
  <message>
   <source>change the batch anew in the trial, or drop the trial</source>
   <translation>den Satz im Versuch neu ändern oder den Versuch verwerfen</translation>
  </message>
  <message>
   <source>change this anew in the trial, or drop the trial</source>
   <translation>dies im Versuch neu ändern oder den Versuch verwerfen</translation>
  </message>
  <message>
   <source>comes on one day only</source>
   <translation>kommt nur an einem Tag</translation>
  </message>
  <message>
   <source>day first</source>
   <translation>Tag zuerst</translation>
  </message>
  <message>
   <source>egg log</source>
   <translation>Legeliste</translation>
  </message>
  <message>
   <source>feed</source>
   <translation>Futter</translation>
  </message>
  <message>
   <source>hatch log</source>
   <translation>Brutbuch</translation>
  </message>
  <message>
   <source>hatched on</source>
   <translation>geschlüpft am</translation>
  </message>
  <message>
   <source>heading</source>
   <translation>Überschrift</translation>
  </message>
  <message>
   <source>headings</source>
   <translation>Überschriften</translation>
  </message>
  <message>
   <source>it has none</source>
   <translation>sie hat keine</translation>
  </message>
  <message>
   <source>it has {cells} for {headings}: a cell that holds a “{mark}” needs quotation marks around it</source>
   <translation>sie hat {cells} für {headings}: eine Zelle, in der ein „{mark}“ steht, braucht Anführungszeichen</translation>
  </message>
  <message>
   <source>it hatches on {day}: then birds can part</source>
   <translation>er schlüpft am {day}: Dann können Vögel abgeteilt werden</translation>
  </message>
  <message>
   <source>it is due on {day}: the day on which it hatched is needed</source>
   <translation>der Schlupf steht am {day} an: der Tag des Schlupfs ist nötig</translation>
  </message>
  <message>
   <source>it is larger than 20 MB</source>
   <translation>sie ist größer als 20 MB</translation>
  </message>
  <message>
   <source>it is needed here by now: change it anew in the trial, or drop the trial</source>
   <translation>es wird hier inzwischen gebraucht: es im Versuch neu ändern oder den Versuch verwerfen</translation>
  </message>
  <message>
   <source>it is no text</source>
   <translation>das ist kein Text</translation>
  </message>
  <message>
   <source>it is of another batch</source>
   <translation>sie ist von einem anderen Satz</translation>
  </message>
  <message>
   <source>it is of another place</source>
   <translation>sie ist von einem anderen Platz</translation>
  </message>
  <message>
   <source>it is on the route of {batches}: give them another place first</source>
   <translation>er liegt auf dem Weg von {batches}: erst einen anderen Platz geben</translation>
  </message>
  <message>
   <source>it is open</source>
   <translation>sie ist offen</translation>
  </message>
  <message>
   <source>it is the file of a spreadsheet, not a table as text</source>
   <translation>das ist die Datei einer Tabellenkalkulation, keine Tabelle als Text</translation>
  </message>
  <message>
   <source>it stands in {counts}: what happened stays</source>
   <translation>es steht in {counts}: Was geschehen ist, bleibt</translation>
  </message>
  <message>
   <source>it stops the plan, and only a clash to watch can be accepted</source>
   <translation>er verhindert den Plan, und nur ein Engpass, der zu beachten ist, kann hingenommen werden</translation>
  </message>
  <message>
   <source>its cells cannot be told apart</source>
   <translation>ihre Zellen lassen sich nicht unterscheiden</translation>
  </message>
  <message>
   <source>left out</source>
   <translation>ausgelassen</translation>
  </message>
  <message>
   <source>month first</source>
   <translation>Monat zuerst</translation>
  </message>
  <message>
   <source>new batch {batch}: {counts}</source>
   <translation>neuer Satz {batch}: {counts}</translation>
  </message>
  <message>
   <source>no batch is in {place} on {day}</source>
   <translation>am {day} ist kein Satz in {place}</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>note: {words}</source>
   <translation>Notiz: {words}</translation>
  </message>
  <message>
   <source>nothing is told for this day</source>
   <translation>für diesen Tag steht nichts da</translation>
  </message>
  <message>
   <source>one for each day is accepted</source>
   <translation>angenommen wird eine je Tag</translation>
  </message>
  <message>
   <source>order of days</source>
   <translation>Reihenfolge der Tage</translation>
  </message>
  <message>
   <source>quit on</source>
   <translation>abgestorben am</translation>
  </message>
  <message>
   <source>record of the trial</source>
   <translation>Datensatz des Versuchs</translation>
  </message>
  <message>
   <source>remove</source>
   <translation>entfernen</translation>
  </message>
  <message>
   <source>remove place</source>
   <translation>Platz entfernen</translation>
  </message>
  <message>
   <source>row</source>
   <translation>Zeile</translation>
  </message>
  <message>
   <source>rows</source>
   <translation>Zeilen</translation>
  </message>
  <message>
   <source>rows below its headings are needed</source>
   <translation>Zeilen unter den Überschriften sind nötig</translation>
  </message>
  <message>
   <source>say what comes first</source>
   <translation>was zuerst steht, muss gesagt werden</translation>
  </message>
  <message>
   <source>set on</source>
   <translation>eingelegt am</translation>
  </message>
  <message>
   <source>split</source>
   <translation>teilen</translation>
  </message>
  <message>
   <source>stand-in</source>
   <translation>Vertretung</translation>
  </message>
  <message>
   <source>table</source>
   <translation>Tabelle</translation>
  </message>
  <message>
   <source>take acceptance back</source>
   <translation>nicht mehr hinnehmen</translation>
  </message>
  <message>
   <source>take it back and record it for the other batch instead</source>
   <translation>sie stattdessen zurücknehmen und für den anderen Satz aufschreiben</translation>
  </message>
  <message>
   <source>take it back and record it for the other place instead</source>
   <translation>sie stattdessen zurücknehmen und für den anderen Platz aufschreiben</translation>
  </message>
  <message>
   <source>taken in</source>
   <translation>übernommen</translation>
  </message>
  <message>
   <source>the batch or the place of these birds is needed</source>
   <translation>der Satz oder der Ort dieser Vögel ist nötig</translation>
  </message>
  <message>
   <source>the clash ({reason})</source>
   <translation>Engpass ({reason})</translation>
  </message>
  <message>
   <source>the clash in {place} ({reason})</source>
   <translation>Engpass in {place} ({reason})</translation>
  </message>
  <message>
   <source>the clash of {who} ({reason})</source>
   <translation>Engpass von {who} ({reason})</translation>
  </message>
  <message>
   <source>the clash of {who} in {place} ({reason})</source>
   <translation>Engpass von {who} in {place} ({reason})</translation>
  </message>
  <message>
   <source>the day is needed</source>
   <translation>der Tag ist nötig</translation>
  </message>
  <message>
   <source>the farm has none yet</source>
   <translation>der Hof hat noch keine</translation>
  </message>
  <message>
   <source>the farm has {there}: what happened stays, correct the count there</source>
   <translation>im Hof steht {there}: was geschehen ist, bleibt; die Zählung dort berichtigen</translation>
  </message>
  <message>
   <source>the farm needs a setter, a hatcher or a cabinet first</source>
   <translation>der Hof braucht erst einen Vorbrüter, einen Schlupfbrüter oder einen Kombibrüter</translation>
  </message>
  <message>
   <source>the id of an accepted clash is accepted</source>
   <translation>angenommen wird die Kennung eines hingenommenen Engpasses</translation>
  </message>
  <message>
   <source>the number of birds that were weighed together is needed</source>
   <translation>die Zahl der zusammen gewogenen Vögel ist nötig</translation>
  </message>
  <message>
   <source>the plan no longer has it</source>
   <translation>der Plan hat es nicht mehr</translation>
  </message>
  <message>
   <source>the same as row {number}</source>
   <translation>dasselbe wie Zeile {number}</translation>
  </message>
  <message>
   <source>the trial takes this place away, so the batch needs another one</source>
   <translation>der Versuch nimmt diesen Platz weg, also braucht der Satz einen anderen</translation>
  </message>
  <message>
   <source>the trial takes {name} away</source>
   <translation>der Versuch nimmt {name} weg</translation>
  </message>
  <message>
   <source>there already</source>
   <translation>schon da</translation>
  </message>
  <message>
   <source>there is none for eggs</source>
   <translation>für Eier gibt es keinen</translation>
  </message>
  <message>
   <source>these are known: {names}</source>
   <translation>bekannt sind: {names}</translation>
  </message>
  <message>
   <source>things were counted of it since: birds can part from it instead</source>
   <translation>seither wurde davon gezählt: Stattdessen lassen sich Vögel davon abteilen</translation>
  </message>
  <message>
   <source>today, {day}, or a day before is accepted</source>
   <translation>heute, {day}, oder ein Tag davor wird angenommen</translation>
  </message>
  <message>
   <source>two batches that have hatched by {day} are accepted</source>
   <translation>zwei Sätze, die bis {day} geschlüpft sind, werden angenommen</translation>
  </message>
  <message>
   <source>undo the step in the history instead: the other batch has these birds now</source>
   <translation>stattdessen den Schritt in der Geschichte zurücknehmen: Der andere Satz hat diese Vögel jetzt</translation>
  </message>
  <message>
   <source>up to {most} at a time are accepted</source>
   <translation>bis zu {most} auf einmal werden angenommen</translation>
  </message>
  <message>
   <source>weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>year first</source>
   <translation>Jahr zuerst</translation>
  </message>
  <message>
   <source>{batches} are in {place} on {day}: a column that names the batch is needed</source>
   <translation>{batches} sind am {day} in {place}: eine Spalte, die den Satz nennt, ist nötig</translation>
  </message>
  <message>
   <source>{batches} in {place}</source>
   <translation>{batches} in {place}</translation>
  </message>
  <message>
   <source>{batch} goes to {place}</source>
   <translation>{batch} kommt nach {place}</translation>
  </message>
  <message>
   <source>{batch} has all of this</source>
   <translation>{batch} hat das alles schon</translation>
  </message>
  <message>
   <source>{batch} hatches on {day}: there are no birds yet.</source>
   <translation>{batch} schlüpft am {day}: Noch sind keine Vögel da.</translation>
  </message>
  <message>
   <source>{batch} is of {day} in the farm: a name of its own is accepted for another batch</source>
   <translation>{batch} ist im Hof vom {day}: ein anderer Satz braucht einen eigenen Namen</translation>
  </message>
  <message>
   <source>{batch} is of {day} in the farm: that day or a later one is accepted</source>
   <translation>{batch} ist im Hof vom {day}: dieser Tag oder ein späterer wird angenommen</translation>
  </message>
  <message>
   <source>{batch} leaves {place} on {day}</source>
   <translation>{batch} verlässt {place} am {day}</translation>
  </message>
  <message>
   <source>{batch} was to be set on {day}.</source>
   <translation>{batch} sollte am {day} eingelegt werden.</translation>
  </message>
  <message>
   <source>{batch} was to hatch on {day}.</source>
   <translation>{batch} sollte am {day} schlüpfen.</translation>
  </message>
  <message>
   <source>{batch}: {counts}</source>
   <translation>{batch}: {counts}</translation>
  </message>
  <message>
   <source>{batch}: {leaving} on {day}</source>
   <translation>{batch}: {leaving} am {day}</translation>
  </message>
  <message>
   <source>{chore}: for {person}</source>
   <translation>{chore}: für {person}</translation>
  </message>
  <message>
   <source>{chore}: on {day}</source>
   <translation>{chore}: am {day}</translation>
  </message>
  <message>
   <source>{days} of clean-out for {place}</source>
   <translation>Ausmisten von {place}: {days}</translation>
  </message>
  <message>
   <source>{day} stays, for counts were recorded since</source>
   <translation>{day} bleibt, denn seither wurde gezählt</translation>
  </message>
  <message>
   <source>{each} g each, where about {expected} g are usual at this age.</source>
   <translation>{each} g je Vogel, wo in diesem Alter etwa {expected} g üblich sind.</translation>
  </message>
  <message>
   <source>{eggs} set on {day}</source>
   <translation>{eggs} eingelegt am {day}</translation>
  </message>
  <message>
   <source>{grams} g {sort}</source>
   <translation>{grams} g {sort}</translation>
  </message>
  <message>
   <source>{hours} hours worked</source>
   <translation>{hours} Stunden gearbeitet</translation>
  </message>
  <message>
   <source>{hours} of light in {place}</source>
   <translation>{hours} Licht in {place}</translation>
  </message>
  <message>
   <source>{name} and {number} more</source>
   <translation>{name} und {number} weitere</translation>
  </message>
  <message>
   <source>{name}, part</source>
   <translation>{name}, Teil</translation>
  </message>
  <message>
   <source>{number} birds should be there: {missing} would be written down as missing.</source>
   <translation>{number} Vögel müssten da sein: {missing} würden als vermisst aufgeschrieben.</translation>
  </message>
  <message>
   <source>{number} for {batch}</source>
   <translation>{number} für {batch}</translation>
  </message>
  <message>
   <source>{number} of {alive} died in one day.</source>
   <translation>{number} von {alive} sind an einem Tag gestorben.</translation>
  </message>
  <message>
   <source>{number} of {alive} moved, but in the plan all of them do. For some only, part them from {batch}.</source>
   <translation>{number} von {alive} umgesetzt, aber im Plan sind es alle. Sind es nur einige, sie von {batch} abteilen.</translation>
  </message>
  <message>
   <source>{number} of {batch} become {new}, in {place}</source>
   <translation>{number} von {batch} werden {new}, in {place}</translation>
  </message>
  <message>
   <source>{number} of {batch} join {other}</source>
   <translation>{number} von {batch} kommen zu {other}</translation>
  </message>
  <message>
   <source>{number} {sort}</source>
   <translation>{number} {sort}</translation>
  </message>
  <message>
   <source>{number} {sort} on {day}</source>
   <translation>{number} {sort} am {day}</translation>
  </message>
  <message>
   <source>{number} {sort}, taken to be on {day}</source>
   <translation>{number} {sort}, angenommen am {day}</translation>
  </message>
  <message>
   <source>{number} {sort}, {grams} g together</source>
   <translation>{number} {sort}, zusammen {grams} g</translation>
  </message>
  <message>
   <source>{of}: {what}, {day}</source>
   <translation>{of}: {what}, {day}</translation>
  </message>
  <message>
   <source>{person} builds {hours} a week</source>
   <translation>{person} baut {hours} die Woche</translation>
  </message>
  <message>
   <source>{person} is at home on {day}</source>
   <translation>{person} ist am {day} zu Hause</translation>
  </message>
  <message>
   <source>{place} ready on {day}</source>
   <translation>{place} fertig am {day}</translation>
  </message>
  <message>
   <source>{sources} in {place}</source>
   <translation>{sources} in {place}</translation>
  </message>
  <message>
   <source>{step} (trial “{trial}”)</source>
   <translation>{step} (Versuch „{trial}“)</translation>
  </message>
  <message>
   <source>{what} stands there already: this one comes on top.</source>
   <translation>{what} steht schon da: Diese Zählung kommt dazu.</translation>
  </message>
  <message>
   <source>{what}, {day}</source>
   <translation>{what}, {day}</translation>
  </message>
  <message>
   <source>“{cell}” may be {days}</source>
   <translation>„{cell}“ kann {days} sein</translation>
  </message>
 </context>
</TS>
