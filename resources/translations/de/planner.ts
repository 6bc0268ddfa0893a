<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>Ask somebody grown up to come on {day}; nobody else's days change.</source>
   <translation>Jemand Erwachsenen bitten, am {day} zu kommen; sonst ändern sich keine Tage.</translation>
  </message>
  <message>
   <source>Bring in {batch} {days} earlier, on {day}; all of its days move along.</source>
   <translation>{batch} {days} früher hereinbringen, am {day}; alle seine Tage ziehen mit.</translation>
  </message>
  <message>
   <source>Bring in {batch} {days} later, on {day}; all of its days move along.</source>
   <translation>{batch} {days} später hereinbringen, am {day}; alle seine Tage ziehen mit.</translation>
  </message>
  <message>
   <source>Clean out {place} in {days} instead of {old}, each time.</source>
   <translation>{place} jedes Mal in {days} ausmisten statt in {old}.</translation>
  </message>
  <message>
   <source>Finish {place} {days} sooner, by {day}.</source>
   <translation>{place} {days} früher fertigstellen, bis {day}.</translation>
  </message>
  <message>
   <source>Give {who} {new} instead of {old}; the days stay as they are.</source>
   <translation>{who}: {new} statt {old}; die Tage bleiben, wie sie sind.</translation>
  </message>
  <message>
   <source>Let lamps in {place} fill the day up to {hours} of light, every day of the year.</source>
   <translation>Lampen in {place} den Tag auf {hours} Licht auffüllen lassen, jeden Tag des Jahres.</translation>
  </message>
  <message>
   <source>New batch</source>
   <translation>Neuer Satz</translation>
  </message>
  <message>
   <source>Part {batch} on {day} and process the {birds} out of {place} on {next_day}.</source>
   <translation>{batch} am {day} trennen und am {next_day} aus {place} schlachten: {birds}.</translation>
  </message>
  <message>
   <source>Part {batch} on {day} and sell the {birds} out of {place} on {next_day}.</source>
   <translation>{batch} am {day} trennen und am {next_day} aus {place} verkaufen: {birds}.</translation>
  </message>
  <message>
   <source>Part {batch} on {day}: its {cocks} go to {pen}, until they are {leaving} on {end}; the hens stay.</source>
   <translation>{batch} am {day} trennen: {cocks} kommen nach {pen}, bis sie am {end} {leaving} werden; die Hennen bleiben.</translation>
  </message>
  <message>
   <source>Part {batch} on {day}: its {cocks} go to {pen}; the hens stay.</source>
   <translation>{batch} am {day} trennen: {cocks} kommen nach {pen}; die Hennen bleiben.</translation>
  </message>
  <message>
   <source>Process the {birds} of {batch} on {day}, at {age} old.</source>
   <translation>Am {day} schlachten: {birds} von {batch}, {age} alt.</translation>
  </message>
  <message>
   <source>Put {length} more of drinker space into {place}: {whole} in all.</source>
   <translation>{length} Tränke mehr in {place}: {whole} im Ganzen.</translation>
  </message>
  <message>
   <source>Put {length} more of feeder space into {place}: {whole} in all.</source>
   <translation>{length} Fressplatz mehr in {place}: {whole} im Ganzen.</translation>
  </message>
  <message>
   <source>Put {sources} into {place}: {new} instead of {old}.</source>
   <translation>{sources} in {place}: {new} statt {old}.</translation>
  </message>
  <message>
   <source>Sell the {birds} of {batch} on {day}, at {age} old.</source>
   <translation>Am {day} verkaufen: {birds} von {batch}, {age} alt.</translation>
  </message>
  <message>
   <source>Sell the {number} birds of the laying group of {batch} by {day}, at {age} old.</source>
   <translation>Die {number} Vögel der Legegruppe von {batch} bis {day} verkaufen, {age} alt.</translation>
  </message>
  <message>
   <source>Sell the {number} birds of {batch} by {day}, at {age} old.</source>
   <translation>Die {number} Vögel von {batch} bis {day} verkaufen, {age} alt.</translation>
  </message>
  <message>
   <source>Sell the {number} chicks of {batch} by {day}, at {age} old.</source>
   <translation>Die {number} Küken von {batch} bis {day} verkaufen, {age} alt.</translation>
  </message>
  <message>
   <source>Sell the {number} started birds of {batch} by {day}, at {age} old.</source>
   <translation>Die {number} Jungvögel von {batch} bis {day} verkaufen, {age} alt.</translation>
  </message>
  <message>
   <source>Sell the {number} surplus cocks of {batch} by {day}, at {age} old.</source>
   <translation>Die {number} überzähligen Hähne von {batch} bis {day} verkaufen, {age} alt.</translation>
  </message>
  <message>
   <source>Set {batch} {days} earlier, on {day}; all of its days move along.</source>
   <translation>{batch} {days} früher einlegen, am {day}; alle seine Tage ziehen mit.</translation>
  </message>
  <message>
   <source>Set {batch} {days} later, on {day}; all of its days move along.</source>
   <translation>{batch} {days} später einlegen, am {day}; alle seine Tage ziehen mit.</translation>
  </message>
  <message>
   <source>Split {batch}: {number} go to {new} instead of {old} on {day}, as “{name}”.</source>
   <translation>{batch} teilen: {number} kommen am {day} nach {new} statt {old}, als „{name}“.</translation>
  </message>
  <message>
   <source>Take {number} birds for {batch} instead of {old}: {lost} fewer.</source>
   <translation>Für {batch} {number} Vögel nehmen statt {old}: {lost} weniger.</translation>
  </message>
  <message>
   <source>Take {number} eggs for {batch} instead of {old}: {lost} fewer.</source>
   <translation>Für {batch} {number} Eier nehmen statt {old}: {lost} weniger.</translation>
  </message>
  <message>
   <source>Take {who} out of {place} {days} earlier, on {day}.</source>
   <translation>{who}: {days} früher aus {place} nehmen, am {day}.</translation>
  </message>
  <message>
   <source>Take {who} out of {place} {days} later, on {day}.</source>
   <translation>{who}: {days} später aus {place} nehmen, am {day}.</translation>
  </message>
  <message>
   <source>about {number} of its {birds}</source>
   <translation>etwa {number} von {birds}</translation>
  </message>
  <message>
   <source>bird of the laying group</source>
   <translation>Vogel der Legegruppe</translation>
  </message>
  <message>
   <source>birds of the laying group</source>
   <translation>Vögel der Legegruppe</translation>
  </message>
  <message>
   <source>more heat source</source>
   <translation>weitere Wärmequelle</translation>
  </message>
  <message>
   <source>more heat sources</source>
   <translation>weitere Wärmequellen</translation>
  </message>
  <message>
   <source>{number} of its {eggs}</source>
   <translation>{number} von {eggs}</translation>
  </message>
  <message>
   <source>{person} builds {hours} a week instead of {old}, until {place} is done by {day}.</source>
   <translation>{person} baut {hours} die Woche statt {old}, bis {place} am {day} fertig ist.</translation>
  </message>
  <message>
   <source>{person} builds {hours} a week, until {place} is done by {day}.</source>
   <translation>{person} baut {hours} die Woche, bis {place} am {day} fertig ist.</translation>
  </message>
  <message>
   <source>{person} stays at home on {day} after all{reason}.</source>
   <translation>{person} bleibt am {day} doch zu Hause{reason}.</translation>
  </message>
  <message>
   <source>{person} stays at home on {day} and is away only on the other days{reason}.</source>
   <translation>{person} bleibt am {day} zu Hause und ist nur an den anderen Tagen fort{reason}.</translation>
  </message>
 </context>
</TS>
