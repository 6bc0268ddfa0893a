<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
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
   <source>a farm keeps its one settings record</source>
   <translation>ein Hof behält seinen einen Datensatz mit Einstellungen</translation>
  </message>
  <message>
   <source>a farm keeps its settings</source>
   <translation>ein Hof behält seine Einstellungen</translation>
  </message>
  <message>
   <source>a place that the plan no longer has</source>
   <translation>ein Platz, den der Plan nicht mehr hat</translation>
  </message>
  <message>
   <source>a trial holds no trials</source>
   <translation>ein Versuch enthält keine Versuche</translation>
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
   <source>anybody</source>
   <translation>irgendwer</translation>
  </message>
  <message>
   <source>change the batch anew in the trial, or drop the trial</source>
   <translation>den Satz im Versuch neu ändern oder den Versuch verwerfen</translation>
  </message>
  <message>
   <source>comes on one day only</source>
   <translation>kommt nur an einem Tag</translation>
  </message>
  <message>
   <source>it hatches on {day}: then birds can part</source>
   <translation>er schlüpft am {day}: Dann können Vögel abgeteilt werden</translation>
  </message>
  <message>
   <source>it is of another batch</source>
   <translation>sie ist von einem anderen Satz</translation>
  </message>
  <message>
   <source>it is on the route of {batches}: give them another place first</source>
   <translation>er liegt auf dem Weg von {batches}: erst einen anderen Platz geben</translation>
  </message>
  <message>
   <source>it stops the plan, and only a clash to watch can be accepted</source>
   <translation>er verhindert den Plan, und nur ein Engpass, der zu beachten ist, kann hingenommen werden</translation>
  </message>
  <message>
   <source>note: {words}</source>
   <translation>Notiz: {words}</translation>
  </message>
  <message>
   <source>one for each day is accepted</source>
   <translation>angenommen wird eine je Tag</translation>
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
   <source>split</source>
   <translation>teilen</translation>
  </message>
  <message>
   <source>stand-in</source>
   <translation>Vertretung</translation>
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
   <source>the id of an accepted clash is accepted</source>
   <translation>angenommen wird die Kennung eines hingenommenen Engpasses</translation>
  </message>
  <message>
   <source>the trial takes this place away, so the batch needs another one</source>
   <translation>der Versuch nimmt diesen Platz weg, also braucht der Satz einen anderen</translation>
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
   <source>{batches} in {place}</source>
   <translation>{batches} in {place}</translation>
  </message>
  <message>
   <source>{batch} goes to {place}</source>
   <translation>{batch} kommt nach {place}</translation>
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
   <source>{counts} name it: what happened stays</source>
   <translation>{counts} nennen es: Was geschehen ist, bleibt</translation>
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
 </context>
</TS>
