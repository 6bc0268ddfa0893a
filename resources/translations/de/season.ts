<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>From {day} the cocks of {batch} in {place} are grown: about {cocks}, where one for {hens} hens is enough. {surplus} should go before they fight and wear out the hens.</source>
   <translation>Ab dem {day} sind die Hähne von {batch} in {place} ausgewachsen: etwa {cocks}, wo einer für {hens} Hennen reicht. Davon sollten {surplus} fort, bevor sie kämpfen und die Hennen zermürben.</translation>
  </message>
  <message>
   <source>The chicks of {batch} hatch on {day} and have no brooder: {chicks} would sit in {place} until {until}.</source>
   <translation>Die Küken von {batch} schlüpfen am {day} und haben keine Aufzuchtbox: {chicks} bis zum {until} in {place}.</translation>
  </message>
  <message>
   <source>The eggs of {names} are in lockdown and must lie still, but {place} goes on turning.</source>
   <translation>Die Eier von {names} sind umgelegt und müssen still liegen, aber {place} wendet weiter.</translation>
  </message>
  <message>
   <source>The eggs of {names} still need turning, and {place} does not turn.</source>
   <translation>Die Eier von {names} müssen noch gewendet werden, und {place} wendet nicht.</translation>
  </message>
  <message>
   <source>The oldest eggs of {batch} would be {age} days old when they are set on {day}; {most} days is the rule, and each day costs about {lost} chicks in 100 eggs.</source>
   <translation>Die ältesten Eier von {batch} wären beim Einlegen am {day} {age} Tage alt; höchstens {most} Tage sind die Regel, und jeder weitere Tag kostet etwa {lost} Küken auf 100 Eier.</translation>
  </message>
  <message>
   <source>at that pace it is done by {day}</source>
   <translation>in diesem Tempo fertig am {day}</translation>
  </message>
  <message>
   <source>at that pace it is never done</source>
   <translation>in diesem Tempo nie fertig</translation>
  </message>
  <message>
   <source>being built</source>
   <translation>im Bau</translation>
  </message>
  <message>
   <source>brooding</source>
   <translation>Aufzucht</translation>
  </message>
  <message>
   <source>chick</source>
   <translation>Küken</translation>
  </message>
  <message>
   <source>chicks</source>
   <translation>Küken</translation>
  </message>
  <message>
   <source>finishing</source>
   <translation>Mast</translation>
  </message>
  <message>
   <source>gone</source>
   <translation>fort</translation>
  </message>
  <message>
   <source>growing</source>
   <translation>Wachsen</translation>
  </message>
  <message>
   <source>hardening off</source>
   <translation>Abhärten</translation>
  </message>
  <message>
   <source>hatching</source>
   <translation>Schlupf</translation>
  </message>
  <message>
   <source>heat source</source>
   <translation>Wärmequelle</translation>
  </message>
  <message>
   <source>laying</source>
   <translation>Legen</translation>
  </message>
  <message>
   <source>laying bird</source>
   <translation>Legewachtel</translation>
  </message>
  <message>
   <source>laying birds</source>
   <translation>Legewachteln</translation>
  </message>
  <message>
   <source>lockdown</source>
   <translation>Umlegen</translation>
  </message>
  <message>
   <source>no heat source</source>
   <translation>keine Wärmequelle</translation>
  </message>
  <message>
   <source>on {day} {who} are in it</source>
   <translation>am {day} sind {who} darin</translation>
  </message>
  <message>
   <source>on {day} {who} is in it</source>
   <translation>am {day} ist {who} darin</translation>
  </message>
  <message>
   <source>setting</source>
   <translation>Vorbrut</translation>
  </message>
  <message>
   <source>stops the plan</source>
   <translation>verhindert den Plan</translation>
  </message>
  <message>
   <source>surplus cock</source>
   <translation>überzähliger Hahn</translation>
  </message>
  <message>
   <source>surplus cocks</source>
   <translation>überzählige Hähne</translation>
  </message>
  <message>
   <source>watch</source>
   <translation>beachten</translation>
  </message>
  <message>
   <source>{batch} ({days} old)</source>
   <translation>{batch} ({days} alt)</translation>
  </message>
  <message>
   <source>{batch} ({number}) is due in {place} on {day}, but it cannot be used: {why}, ready on {until}.</source>
   <translation>{batch} ({number}) soll am {day} nach {place}, aber der Platz ist nicht benutzbar: {why}, fertig am {until}.</translation>
  </message>
  <message>
   <source>{batch} ({number}) is due in {place} on {day}, but it cannot be used: {why}, until {until}.</source>
   <translation>{batch} ({number}) soll am {day} nach {place}, aber der Platz ist nicht benutzbar: {why}, bis zum {until}.</translation>
  </message>
  <message>
   <source>{batch} comes on {day}</source>
   <translation>{batch} kommt am {day}</translation>
  </message>
  <message>
   <source>{batch} goes into lockdown on {day}</source>
   <translation>{batch}: Umlegen am {day}</translation>
  </message>
  <message>
   <source>{batch} has a laying group that moves to {place} on {day}</source>
   <translation>{batch}: Umzug der Legegruppe nach {place} am {day}</translation>
  </message>
  <message>
   <source>{batch} has surplus cocks that move to {place} on {day}</source>
   <translation>{batch}: Umzug der überzähligen Hähne nach {place} am {day}</translation>
  </message>
  <message>
   <source>{batch} hatches on {day}</source>
   <translation>{batch}: Schlupf am {day}</translation>
  </message>
  <message>
   <source>{batch} is set on {day}</source>
   <translation>{batch}: Einlegen am {day}</translation>
  </message>
  <message>
   <source>{batch} is to be processed on {day}</source>
   <translation>{batch}: Schlachten am {day}</translation>
  </message>
  <message>
   <source>{batch} moves to {place} on {day}</source>
   <translation>{batch}: Umzug nach {place} am {day}</translation>
  </message>
  <message>
   <source>{batch} was brought in on {came} and would be with others in {place} from {day}, after {had}: {apart} days apart are asked for, until {until}.</source>
   <translation>{batch} kam am {came} und wäre ab dem {day} mit anderen in {place}, {had} danach: {apart} Tage getrennt sind nötig, bis zum {until}.</translation>
  </message>
  <message>
   <source>{birds} are too few to be calm in the {area} of {place}; from {least} on a group settles. Fewer startle and fly up: give them less room, or low cover.</source>
   <translation>{birds} sind zu wenige, um auf {area} in {place} ruhig zu sein; nötig sind {least}, damit eine Gruppe zur Ruhe kommt. Weniger erschrecken und fliegen auf: weniger Raum geben oder niedrige Deckung.</translation>
  </message>
  <message>
   <source>{birds} birds of the laying group of {batch} leave {place} on {day} and have no place to go to.</source>
   <translation>{birds} Vögel der Legegruppe von {batch} verlassen {place} am {day} und haben keinen Platz danach.</translation>
  </message>
  <message>
   <source>{birds} birds of {batch} leave {place} on {day} and have no place to go to.</source>
   <translation>{birds} Vögel von {batch} verlassen {place} am {day} und haben keinen Platz danach.</translation>
  </message>
  <message>
   <source>{birds} birds of {names} together in {place} by {day} are more than {most}: in a fright they pile up. Fill the corners, put low cover under a high roof, or part them.</source>
   <translation>{birds} Vögel von {names} zusammen in {place} sind am {day} mehr als {most}: Bei Schreck häufen sie sich aufeinander. Ecken ausfüllen, niedrige Deckung unter ein hohes Dach stellen oder sie trennen.</translation>
  </message>
  <message>
   <source>{birds} is too few to be calm in the {area} of {place}; from {least} on a group settles. Fewer startle and fly up: give them less room, or low cover.</source>
   <translation>{birds} sind zu wenige, um auf den {area} von {place} ruhig zu sein; ab {least} beruhigt sich eine Gruppe. Weniger erschrecken und fliegen auf: weniger Raum geben oder niedrige Deckung.</translation>
  </message>
  <message>
   <source>{birds} need {need} by {day}, {place} has {have}: about {over} too many.</source>
   <translation>{birds} brauchen am {day} {need}, {place} hat {have}: etwa {over} zu viel.</translation>
  </message>
  <message>
   <source>{birds} needs {need} by {day}, {place} has {have}: about {over} too many.</source>
   <translation>{birds} brauchen bis {day} {need}, {place} hat {have}: etwa {over} zu viel.</translation>
  </message>
  <message>
   <source>{birds} of the laying group of {batch} should be gone by {day}, at {age} old, but stay in {place} until {until}: their lay falls off, and they go on eating.</source>
   <translation>{birds} der Legegruppe von {batch} sollten am {day} fort sein, {age} alt, bleiben aber bis zum {until} in {place}: Das Legen lässt nach, und sie fressen weiter.</translation>
  </message>
  <message>
   <source>{birds} of the laying group of {batch} should be gone by {day}, at {age} old, but stays in {place} until {until}: their lay falls off, and they go on eating.</source>
   <translation>{birds} der Legegruppe von {batch} sollte am {day} fort sein, {age} alt, bleibt aber bis zum {until} in {place}: Das Legen lässt nach, und das Fressen geht weiter.</translation>
  </message>
  <message>
   <source>{birds} of {batches}</source>
   <translation>{birds} von {batches}</translation>
  </message>
  <message>
   <source>{birds} of {batch} would be in {place} at {age} old; they are not feathered before day {number}, on {day}.</source>
   <translation>{birds} von {batch} schon in {place}, {age} alt; befiedert sind sie nicht vor Tag {number}, am {day}.</translation>
  </message>
  <message>
   <source>{birds} of {batch} would be in {place} at {age} old; they are not off heat before day {number}, on {day}.</source>
   <translation>{birds} von {batch} schon in {place}, {age} alt; ohne Wärme kommen sie nicht vor Tag {number} aus, am {day}.</translation>
  </message>
  <message>
   <source>{birds} of {batch} would be out in {place} at {age} old, in nights down to {low}; below {limit} is too cold before day {number}.</source>
   <translation>{birds} von {batch} draußen in {place}, {age} alt, bei Nächten bis hinab zu {low}; unter {limit} ist es vor Tag {number} zu kalt.</translation>
  </message>
  <message>
   <source>{birds} of {batch} would have {hours} of light in {place} on {day}; with less than {need} they lay less, or stop.</source>
   <translation>{birds} von {batch}: am {day} in {place} nur {hours} Licht; bei weniger als {need} legen sie weniger oder gar nicht mehr.</translation>
  </message>
  <message>
   <source>{birds} of {batch} would have {hours} of light of lamps in {place} on {day}; with less than {need} they lay less, or stop. Without the farm's latitude daylight is not counted.</source>
   <translation>{birds} von {batch}: am {day} in {place} nur {hours} Lampenlicht; bei weniger als {need} legen sie weniger oder gar nicht mehr. Ohne die geografische Breite des Hofs zählt das Tageslicht nicht mit.</translation>
  </message>
  <message>
   <source>{birds} of {names} need {needed} of drinker space by {day}, {place} has {there}: about {over} too many, and the weaker ones go short.</source>
   <translation>{birds} von {names} brauchen am {day} {needed} Tränkenbreite, {place} hat {there}: etwa {over} zu viel, und die schwächeren kommen zu kurz.</translation>
  </message>
  <message>
   <source>{birds} of {names} need {needed} of feeder space by {day}, {place} has {there}: about {over} too many, and the weaker ones go short.</source>
   <translation>{birds} von {names} brauchen am {day} {needed} Fressplatzbreite, {place} hat {there}: etwa {over} zu viel, und die schwächeren kommen zu kurz.</translation>
  </message>
  <message>
   <source>{birds} of {names} needs {needed} of drinker space by {day}, {place} has {there}: about {over} too many, and the weaker ones go short.</source>
   <translation>{birds} von {names} braucht am {day} {needed} Tränkenbreite, {place} hat {there}: etwa {over} zu viel, und die schwächeren kommen zu kurz.</translation>
  </message>
  <message>
   <source>{birds} of {names} needs {needed} of feeder space by {day}, {place} has {there}: about {over} too many, and the weaker ones go short.</source>
   <translation>{birds} von {names} braucht am {day} {needed} Fressplatzbreite, {place} hat {there}: etwa {over} zu viel, und die schwächeren kommen zu kurz.</translation>
  </message>
  <message>
   <source>{birds} surplus cocks of {batch} leave {place} on {day} and have no place to go to.</source>
   <translation>{birds} überzählige Hähne von {batch} verlassen {place} am {day} und haben keinen Platz danach.</translation>
  </message>
  <message>
   <source>{chicks} of {names} need heat by {day}, and {place} has {lamps}: {over} too many. Chilled chicks pile up and smother.</source>
   <translation>{chicks} von {names} brauchen am {day} Wärme, und {place} hat {lamps}: {over} zu viel. Ausgekühlte Küken drängen sich aufeinander und ersticken.</translation>
  </message>
  <message>
   <source>{chicks} of {names} needs heat by {day}, and {place} has {lamps}: {over} too many. Chilled chicks pile up and smother.</source>
   <translation>{chicks} von {names} braucht am {day} Wärme, und {place} hat {lamps}: {over} zu viel. Ausgekühlte Küken drängen sich aufeinander und ersticken.</translation>
  </message>
  <message>
   <source>{cocks} of {batch} should be gone by {day}, at {age} old, but stay in {place} until {until}: they eat, and hardly grow any more.</source>
   <translation>{cocks} von {batch} sollten am {day} fort sein, {age} alt, bleiben aber bis zum {until} in {place}: Sie fressen und wachsen kaum noch.</translation>
  </message>
  <message>
   <source>{cocks} of {batch} should be gone by {day}, at {age} old, but stays in {place} until {until}: they eat, and hardly grow any more.</source>
   <translation>{cocks} von {batch} sollte am {day} fort sein, {age} alt, bleibt aber bis zum {until} in {place}: Er frisst und wächst kaum noch.</translation>
  </message>
  <message>
   <source>{cocks} of {batch} would still be with the hens in {place} on {day}, grown: they fight and wear out the hens.</source>
   <translation>{cocks} von {batch} am {day} noch bei den Hennen in {place}, ausgewachsen: Hähne kämpfen und zermürben die Hennen.</translation>
  </message>
  <message>
   <source>{eggs} of {batch} have no place after {place} on {day}.</source>
   <translation>{eggs} von {batch} nach {place} am {day} ohne Platz.</translation>
  </message>
  <message>
   <source>{eggs} of {batch} would be in {place} from {day}, before the chicks are hatched and dry on {dry}: they need egg places.</source>
   <translation>{eggs} von {batch} ab dem {day} in {place}, bevor die Küken am {dry} geschlüpft und trocken sind: Eier brauchen Eiplätze.</translation>
  </message>
  <message>
   <source>{names} come in on {day}</source>
   <translation>{names} ziehen am {day} ein</translation>
  </message>
  <message>
   <source>{names} comes in on {day}</source>
   <translation>{names} zieht am {day} ein</translation>
  </message>
  <message>
   <source>{names} leave on {day}</source>
   <translation>{names} ziehen am {day} aus</translation>
  </message>
  <message>
   <source>{names} leaves on {day}</source>
   <translation>{names} zieht am {day} aus</translation>
  </message>
  <message>
   <source>{names} need {number} egg places by {day}, {place} has {room}: {over} too many.</source>
   <translation>{names} brauchen am {day} {number} Eiplätze, {place} hat {room}: {over} zu viel.</translation>
  </message>
  <message>
   <source>{names} needs {number} egg places by {day}, {place} has {room}: {over} too many.</source>
   <translation>{names} braucht am {day} {number} Eiplätze, {place} hat {room}: {over} zu viel.</translation>
  </message>
  <message>
   <source>{old} and {young} would share {place} from {day}: {apart} apart, {most} is the most. They need different heat, and small ones are trampled.</source>
   <translation>{old} und {young} wären ab dem {day} zusammen in {place}: {apart} auseinander, höchstens {most} sind erlaubt. Sie brauchen verschiedene Wärme, und die kleinen werden zertrampelt.</translation>
  </message>
  <message>
   <source>{place} cannot do both: the eggs of {turning} need turning while those of {still} must lie still in damper air.</source>
   <translation>{place} kann nicht beides: Die Eier von {turning} müssen gewendet werden, während die von {still} in feuchterer Luft still liegen müssen.</translation>
  </message>
  <message>
   <source>{place} needs {days} of clean-out after {leaving}, but {coming}, after {had}.</source>
   <translation>{place} braucht zum Ausmisten {days}: {leaving}, aber {coming}, {had} danach.</translation>
  </message>
  <message>
   <source>{place} needs {days} of clean-out after {leaving}, but {coming}, the same day.</source>
   <translation>{place} braucht zum Ausmisten {days}: {leaving}, aber {coming}, am selben Tag.</translation>
  </message>
  <message>
   <source>{place} needs {hours} of building, and people have none for it until {due}: {pace}.</source>
   <translation>{place} braucht noch {hours} Bauarbeit, und die Leute haben bis dahin keine dafür ({due}): {pace}.</translation>
  </message>
  <message>
   <source>{place} needs {hours} of building, and people have {there} for it until {due}: {pace}.</source>
   <translation>{place} braucht noch {hours} Bauarbeit, und die Leute haben bis dahin {there} dafür ({due}): {pace}.</translation>
  </message>
  <message>
   <source>{place} needs {hours} of building, and {due} already: {pace}.</source>
   <translation>{place} braucht noch {hours} Bauarbeit, und schon {due}: {pace}.</translation>
  </message>
  <message>
   <source>{place} needs {hours} of building, {due}, and nobody has hours for building.</source>
   <translation>{place} braucht noch {hours} Bauarbeit, {due}, und niemand hat Stunden zum Bauen.</translation>
  </message>
  <message>
   <source>{sources} for {chicks}</source>
   <translation>{sources} für {chicks}</translation>
  </message>
  <message>
   <source>{weekday} {day}</source>
   <translation>{weekday}, {day}</translation>
  </message>
  <message>
   <source>{what}, and no grown-up is at home.</source>
   <translation>{what}, und niemand Erwachsenes ist zu Hause.</translation>
  </message>
  <message>
   <source>{what}, and nobody is at home.</source>
   <translation>{what}, und niemand ist zu Hause.</translation>
  </message>
  <message>
   <source>{who} are in it on {day}</source>
   <translation>{who} sind am {day} darin</translation>
  </message>
  <message>
   <source>{who} come on {day}</source>
   <translation>{who} kommen am {day}</translation>
  </message>
  <message>
   <source>{who} comes on {day}</source>
   <translation>{who} kommt am {day}</translation>
  </message>
  <message>
   <source>{who} is in it on {day}</source>
   <translation>{who} ist am {day} darin</translation>
  </message>
 </context>
</TS>
