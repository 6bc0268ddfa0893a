<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source> (laying group)</source>
   <translation> (Legegruppe)</translation>
  </message>
  <message>
   <source> (surplus cocks)</source>
   <translation> (überzählige Hähne)</translation>
  </message>
  <message>
   <source> ({count} of clean-out counted)</source>
   <translation> ({count} Ausmisten gezählt)</translation>
  </message>
  <message>
   <source>, laying group</source>
   <translation>, Legegruppe</translation>
  </message>
  <message>
   <source>, surplus cocks</source>
   <translation>, überzählige Hähne</translation>
  </message>
  <message>
   <source>, then {leaving}</source>
   <translation>, dann {leaving}</translation>
  </message>
  <message>
   <source>, worst on {day}</source>
   <translation>, am ärgsten am {day}</translation>
  </message>
  <message>
   <source>8 hatches in 10 give {least} to {most} chicks</source>
   <translation>8 von 10 Schlüpfen geben {least} bis {most} Küken</translation>
  </message>
  <message>
   <source>Accepted</source>
   <translation>Hingenommen</translation>
  </message>
  <message>
   <source>Accepted ({reason}): {sentence}</source>
   <translation>Hingenommen ({reason}): {sentence}</translation>
  </message>
  <message>
   <source>Accepted because</source>
   <translation>Hingenommen, weil</translation>
  </message>
  <message>
   <source>Accepted clash “{reason}”</source>
   <translation>Hingenommener Engpass „{reason}“</translation>
  </message>
  <message>
   <source>Accepted: {reason}</source>
   <translation>Hingenommen: {reason}</translation>
  </message>
  <message>
   <source>Alive</source>
   <translation>Am Leben</translation>
  </message>
  <message>
   <source>Birds</source>
   <translation>Vögel</translation>
  </message>
  <message>
   <source>Birds brought in</source>
   <translation>Hereingebrachte Vögel</translation>
  </message>
  <message>
   <source>Birds processed</source>
   <translation>Geschlachtete Vögel</translation>
  </message>
  <message>
   <source>Birds sold</source>
   <translation>Verkaufte Vögel</translation>
  </message>
  <message>
   <source>Breeding groups</source>
   <translation>Zuchtgruppen</translation>
  </message>
  <message>
   <source>Came</source>
   <translation>Kamen</translation>
  </message>
  <message>
   <source>Caution: {caution}</source>
   <translation>Vorsicht: {caution}</translation>
  </message>
  <message>
   <source>Changed in both – {sentence}</source>
   <translation>In beiden geändert – {sentence}</translation>
  </message>
  <message>
   <source>Chicks expected</source>
   <translation>Erwartete Küken</translation>
  </message>
  <message>
   <source>Chore mark</source>
   <translation>Vermerk zur Aufgabe</translation>
  </message>
  <message>
   <source>Clashes ahead</source>
   <translation>Engpässe voraus</translation>
  </message>
  <message>
   <source>Counted on {day}</source>
   <translation>Gezählt am {day}</translation>
  </message>
  <message>
   <source>Counts on</source>
   <translation>Rechnet mit</translation>
  </message>
  <message>
   <source>Days too short in {place}</source>
   <translation>Zu kurze Tage in {place}</translation>
  </message>
  <message>
   <source>Died</source>
   <translation>Gestorben</translation>
  </message>
  <message>
   <source>Eased</source>
   <translation>Gelindert</translation>
  </message>
  <message>
   <source>Eggs</source>
   <translation>Eier</translation>
  </message>
  <message>
   <source>Eggs from</source>
   <translation>Eier von</translation>
  </message>
  <message>
   <source>Eggs too old for {place}</source>
   <translation>Zu alte Eier für {place}</translation>
  </message>
  <message>
   <source>Farm</source>
   <translation>Hof</translation>
  </message>
  <message>
   <source>Feathered</source>
   <translation>Befiedert</translation>
  </message>
  <message>
   <source>First eggs</source>
   <translation>Erste Eier</translation>
  </message>
  <message>
   <source>First eggs of {record}</source>
   <translation>Erste Eier von {record}</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>Gone</source>
   <translation>Weg</translation>
  </message>
  <message>
   <source>Hatch</source>
   <translation>Schlupf</translation>
  </message>
  <message>
   <source>Hatched</source>
   <translation>Geschlüpft</translation>
  </message>
  <message>
   <source>Hens in lay, next {number} months</source>
   <translation>Legende Hennen, nächste {number} Monate</translation>
  </message>
  <message>
   <source>Hens in lay, {day}</source>
   <translation>Legende Hennen, {day}</translation>
  </message>
  <message>
   <source>How sure</source>
   <translation>Wie sicher</translation>
  </message>
  <message>
   <source>Incubators</source>
   <translation>Brüter</translation>
  </message>
  <message>
   <source>Its eggs</source>
   <translation>Seine Eier</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>Laying group to {place}</source>
   <translation>Legegruppe nach {place}</translation>
  </message>
  <message>
   <source>Left</source>
   <translation>Fort</translation>
  </message>
  <message>
   <source>Left out – {sentence}</source>
   <translation>Weggelassen – {sentence}</translation>
  </message>
  <message>
   <source>Lockdown</source>
   <translation>Umlegen</translation>
  </message>
  <message>
   <source>More than one egg a hen and day: were eggs of several days counted on one?</source>
   <translation>Mehr als ein Ei je Henne und Tag: Wurden Eier mehrerer Tage an einem gezählt?</translation>
  </message>
  <message>
   <source>New</source>
   <translation>Neu</translation>
  </message>
  <message>
   <source>Nights too cold in {place}</source>
   <translation>Zu kalte Nächte in {place}</translation>
  </message>
  <message>
   <source>No clash stays.</source>
   <translation>Kein Engpass bleibt.</translation>
  </message>
  <message>
   <source>No place after {place}</source>
   <translation>Kein Platz nach {place}</translation>
  </message>
  <message>
   <source>No time to clean out {place}</source>
   <translation>Keine Zeit zum Ausmisten: {place}</translation>
  </message>
  <message>
   <source>Nobody home for {place}</source>
   <translation>Niemand da für {place}</translation>
  </message>
  <message>
   <source>Not taken in: {headings}.</source>
   <translation>Nicht übernommen: {headings}.</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Nothing has been counted yet.</source>
   <translation>Noch ist nichts gezählt.</translation>
  </message>
  <message>
   <source>Nothing otherwise than in the plan.</source>
   <translation>Nichts anders als im Plan.</translation>
  </message>
  <message>
   <source>Of no batch: {sums}</source>
   <translation>Ohne Satz: {sums}</translation>
  </message>
  <message>
   <source>Own figure “{figure}”</source>
   <translation>Eigener Richtwert „{figure}“</translation>
  </message>
  <message>
   <source>Parted from it</source>
   <translation>Davon abgeteilt</translation>
  </message>
  <message>
   <source>Past their day in {place}</source>
   <translation>Überfällig in {place}</translation>
  </message>
  <message>
   <source>Promises and money are not compared: the program does not keep them yet.</source>
   <translation>Zusagen und Geld werden nicht verglichen: Das Programm führt sie noch nicht.</translation>
  </message>
  <message>
   <source>Quarantine not over in {place}</source>
   <translation>Quarantäne nicht vorbei in {place}</translation>
  </message>
  <message>
   <source>Read as {log}: columns parted by a {delimiter}, days with the {order}, decimals after “{mark}”.</source>
   <translation>Gelesen als {log}: Spalten getrennt durch {delimiter}, Tage mit der Reihenfolge „{order}“, Dezimalzeichen „{mark}“.</translation>
  </message>
  <message>
   <source>Room left throughout each week from</source>
   <translation>Freier Raum in jeder Woche ab</translation>
  </message>
  <message>
   <source>Set</source>
   <translation>Eingelegt</translation>
  </message>
  <message>
   <source>Severity</source>
   <translation>Schwere</translation>
  </message>
  <message>
   <source>Sexed on {day}</source>
   <translation>Nach Geschlecht bestimmt am {day}</translation>
  </message>
  <message>
   <source>Short by</source>
   <translation>Es fehlt</translation>
  </message>
  <message>
   <source>Stop the plan</source>
   <translation>Verhindern den Plan</translation>
  </message>
  <message>
   <source>Stops the plan</source>
   <translation>Verhindert den Plan</translation>
  </message>
  <message>
   <source>Surplus cocks to {place}</source>
   <translation>Überzählige Hähne nach {place}</translation>
  </message>
  <message>
   <source>Take care</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <source>There is no small change to try against it. Change the plan by hand.</source>
   <translation>Es gibt keine kleine Änderung, die dagegen zu versuchen wäre. Den Plan von Hand ändern.</translation>
  </message>
  <message>
   <source>To watch</source>
   <translation>Zu beachten</translation>
  </message>
  <message>
   <source>To {place}</source>
   <translation>Nach {place}</translation>
  </message>
  <message>
   <source>Too few birds in {place}</source>
   <translation>Zu wenige Vögel in {place}</translation>
  </message>
  <message>
   <source>Too little drinker space in {place}</source>
   <translation>Zu kurze Tränke in {place}</translation>
  </message>
  <message>
   <source>Too little feeder space in {place}</source>
   <translation>Zu wenig Fressplatz in {place}</translation>
  </message>
  <message>
   <source>Too little heat in {place}</source>
   <translation>Zu wenig Wärme in {place}</translation>
  </message>
  <message>
   <source>Too many cocks in {place}</source>
   <translation>Zu viele Hähne in {place}</translation>
  </message>
  <message>
   <source>Too many eggs for {place}</source>
   <translation>Zu viele Eier für {place}</translation>
  </message>
  <message>
   <source>Too many together in {place}</source>
   <translation>Zu viele beisammen in {place}</translation>
  </message>
  <message>
   <source>Too young for {place}</source>
   <translation>Zu jung für {place}</translation>
  </message>
  <message>
   <source>Turning and lockdown in {place}</source>
   <translation>Wenden und Umlegen in {place}</translation>
  </message>
  <message>
   <source>Two ages in {place}</source>
   <translation>Zwei Alter in {place}</translation>
  </message>
  <message>
   <source>Watch</source>
   <translation>Beachten</translation>
  </message>
  <message>
   <source>When</source>
   <translation>Wann</translation>
  </message>
  <message>
   <source>Who</source>
   <translation>Wer</translation>
  </message>
  <message>
   <source>Why</source>
   <translation>Warum</translation>
  </message>
  <message>
   <source>Worse</source>
   <translation>Schlimmer</translation>
  </message>
  <message>
   <source>a batch that is gone</source>
   <translation>ein Satz, den es nicht mehr gibt</translation>
  </message>
  <message>
   <source>a batch that was removed</source>
   <translation>ein entfernter Satz</translation>
  </message>
  <message>
   <source>a day earlier</source>
   <translation>einen Tag früher</translation>
  </message>
  <message>
   <source>a day later</source>
   <translation>einen Tag später</translation>
  </message>
  <message>
   <source>a hatch log</source>
   <translation>Brutbuch</translation>
  </message>
  <message>
   <source>a place not built in time</source>
   <translation>ein Platz, der nicht rechtzeitig fertig wird</translation>
  </message>
  <message>
   <source>a place that cannot be used</source>
   <translation>ein Platz, der nicht benutzbar ist</translation>
  </message>
  <message>
   <source>about {day}</source>
   <translation>etwa {day}</translation>
  </message>
  <message>
   <source>age (grown up or not)</source>
   <translation>Alter (erwachsen oder nicht)</translation>
  </message>
  <message>
   <source>age in days when they come</source>
   <translation>Alter in Tagen bei der Ankunft</translation>
  </message>
  <message>
   <source>an egg log</source>
   <translation>Legeliste</translation>
  </message>
  <message>
   <source>another {word}</source>
   <translation>anders: {word}</translation>
  </message>
  <message>
   <source>as planned</source>
   <translation>wie geplant</translation>
  </message>
  <message>
   <source>at {hour} o'clock</source>
   <translation>um {hour} Uhr</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>Strich</translation>
  </message>
  <message>
   <source>bedding changed in {place}</source>
   <translation>Einstreu gewechselt in {place}</translation>
  </message>
  <message>
   <source>being built, ready on {day}</source>
   <translation>im Bau, fertig am {day}</translation>
  </message>
  <message>
   <source>birds past their day</source>
   <translation>überfällige Vögel</translation>
  </message>
  <message>
   <source>birds too young for a pen</source>
   <translation>zu junge Vögel für eine Voliere</translation>
  </message>
  <message>
   <source>birds without a place</source>
   <translation>Vögel ohne Platz</translation>
  </message>
  <message>
   <source>bought birds among others too early</source>
   <translation>gekaufte Vögel zu früh unter anderen</translation>
  </message>
  <message>
   <source>brought in {days} earlier, on {day}</source>
   <translation>hereingebracht {days} früher, am {day}</translation>
  </message>
  <message>
   <source>brought in {days} later, on {day}</source>
   <translation>hereingebracht {days} später, am {day}</translation>
  </message>
  <message>
   <source>called {name}</source>
   <translation>heißt {name}</translation>
  </message>
  <message>
   <source>chores</source>
   <translation>Aufgaben</translation>
  </message>
  <message>
   <source>clash</source>
   <translation>Engpass</translation>
  </message>
  <message>
   <source>clashes</source>
   <translation>Engpässe</translation>
  </message>
  <message>
   <source>cock</source>
   <translation>Hahn</translation>
  </message>
  <message>
   <source>comma</source>
   <translation>Komma</translation>
  </message>
  <message>
   <source>corrected</source>
   <translation>berichtigt</translation>
  </message>
  <message>
   <source>curve</source>
   <translation>Kurve</translation>
  </message>
  <message>
   <source>day of counting the work</source>
   <translation>Tag der Zählung der Arbeit</translation>
  </message>
  <message>
   <source>day on which it is ready</source>
   <translation>Tag der Fertigstellung</translation>
  </message>
  <message>
   <source>days too short</source>
   <translation>zu kurze Tage</translation>
  </message>
  <message>
   <source>does not stay in {place} to the end</source>
   <translation>bleibt nicht in {place} bis zum Ende</translation>
  </message>
  <message>
   <source>drinker space</source>
   <translation>Tränke</translation>
  </message>
  <message>
   <source>egg place</source>
   <translation>Eiplatz</translation>
  </message>
  <message>
   <source>eggs too old</source>
   <translation>zu alte Eier</translation>
  </message>
  <message>
   <source>entry</source>
   <translation>Eintrag</translation>
  </message>
  <message>
   <source>feathered {day}, planned {plan}</source>
   <translation>befiedert {day}, geplant {plan}</translation>
  </message>
  <message>
   <source>feeder space</source>
   <translation>Fressplatz</translation>
  </message>
  <message>
   <source>free from {day}</source>
   <translation>frei ab {day}</translation>
  </message>
  <message>
   <source>free now</source>
   <translation>jetzt frei</translation>
  </message>
  <message>
   <source>from {day}, until they are replaced</source>
   <translation>ab {day}, bis sie ersetzt werden</translation>
  </message>
  <message>
   <source>has another note</source>
   <translation>hat eine andere Notiz</translation>
  </message>
  <message>
   <source>hatched here</source>
   <translation>hier geschlüpft</translation>
  </message>
  <message>
   <source>hatched {day}, planned {plan}</source>
   <translation>geschlüpft {day}, geplant {plan}</translation>
  </message>
  <message>
   <source>hen</source>
   <translation>Henne</translation>
  </message>
  <message>
   <source>hours of light</source>
   <translation>Stunden Licht</translation>
  </message>
  <message>
   <source>in fewer than 1 of 100 hatches</source>
   <translation>in weniger als 1 von 100 Schlüpfen</translation>
  </message>
  <message>
   <source>in more than 99 of 100 hatches</source>
   <translation>in mehr als 99 von 100 Schlüpfen</translation>
  </message>
  <message>
   <source>in {new} instead of {old}</source>
   <translation>in {new} statt {old}</translation>
  </message>
  <message>
   <source>in {number} of 100 hatches</source>
   <translation>in {number} von 100 Schlüpfen</translation>
  </message>
  <message>
   <source>is something else</source>
   <translation>ist etwas anderes</translation>
  </message>
  <message>
   <source>laying group</source>
   <translation>Legegruppe</translation>
  </message>
  <message>
   <source>lb</source>
   <translation>lb</translation>
  </message>
  <message>
   <source>less: {clash}</source>
   <translation>weniger: {clash}</translation>
  </message>
  <message>
   <source>moved to {place}</source>
   <translation>umgesetzt nach {place}</translation>
  </message>
  <message>
   <source>moved {day}, planned {plan}</source>
   <translation>umgesetzt {day}, geplant {plan}</translation>
  </message>
  <message>
   <source>new: {clash}</source>
   <translation>neu: {clash}</translation>
  </message>
  <message>
   <source>next in: {who} on {day}</source>
   <translation>als Nächstes: {who} am {day}</translation>
  </message>
  <message>
   <source>next in: {who} the same day</source>
   <translation>als Nächstes: {who} am selben Tag</translation>
  </message>
  <message>
   <source>nights too cold</source>
   <translation>zu kalte Nächte</translation>
  </message>
  <message>
   <source>no grown-up at home</source>
   <translation>kein Erwachsener da</translation>
  </message>
  <message>
   <source>no longer {leaving} from {place}</source>
   <translation>nicht mehr {leaving} aus {place}</translation>
  </message>
  <message>
   <source>no longer: {clash}</source>
   <translation>nicht mehr: {clash}</translation>
  </message>
  <message>
   <source>no time to clean out</source>
   <translation>keine Zeit zum Ausmisten</translation>
  </message>
  <message>
   <source>nobody at home</source>
   <translation>niemand da</translation>
  </message>
  <message>
   <source>not counted</source>
   <translation>nicht gezählt</translation>
  </message>
  <message>
   <source>not told</source>
   <translation>nicht gesagt</translation>
  </message>
  <message>
   <source>oldest egg stored in days</source>
   <translation>ältestes Ei gelagert in Tagen</translation>
  </message>
  <message>
   <source>on another route</source>
   <translation>auf anderem Weg</translation>
  </message>
  <message>
   <source>origin</source>
   <translation>Herkunft</translation>
  </message>
  <message>
   <source>out of {place} {days} earlier</source>
   <translation>aus {place} {days} früher</translation>
  </message>
  <message>
   <source>out of {place} {days} later</source>
   <translation>aus {place} {days} später</translation>
  </message>
  <message>
   <source>pair</source>
   <translation>Paar</translation>
  </message>
  <message>
   <source>pair of hands</source>
   <translation>Paar Hände</translation>
  </message>
  <message>
   <source>pairs</source>
   <translation>Paare</translation>
  </message>
  <message>
   <source>plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <source>position</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>put off from {day}</source>
   <translation>verschoben vom {day}</translation>
  </message>
  <message>
   <source>role</source>
   <translation>Aufgabe des Platzes</translation>
  </message>
  <message>
   <source>route</source>
   <translation>Weg</translation>
  </message>
  <message>
   <source>season {year}</source>
   <translation>Saison {year}</translation>
  </message>
  <message>
   <source>semicolon</source>
   <translation>Semikolon</translation>
  </message>
  <message>
   <source>set and hatched here</source>
   <translation>hier eingelegt und geschlüpft</translation>
  </message>
  <message>
   <source>set here</source>
   <translation>hier eingelegt</translation>
  </message>
  <message>
   <source>set of days away</source>
   <translation>Reihe von Tagen der Abwesenheit</translation>
  </message>
  <message>
   <source>set of days out of use</source>
   <translation>Reihe von Tagen außer Betrieb</translation>
  </message>
  <message>
   <source>set of night lows</source>
   <translation>Reihe kalter Nächte</translation>
  </message>
  <message>
   <source>set {days} earlier, on {day}</source>
   <translation>eingelegt {days} früher, am {day}</translation>
  </message>
  <message>
   <source>set {days} later, on {day}</source>
   <translation>eingelegt {days} später, am {day}</translation>
  </message>
  <message>
   <source>set {day}, planned {plan}</source>
   <translation>eingelegt {day}, geplant {plan}</translation>
  </message>
  <message>
   <source>small change</source>
   <translation>kleine Änderung</translation>
  </message>
  <message>
   <source>small changes</source>
   <translation>kleine Änderungen</translation>
  </message>
  <message>
   <source>spot, indoors or outdoors</source>
   <translation>Standort, drinnen oder draußen</translation>
  </message>
  <message>
   <source>stays in {place} to the end</source>
   <translation>bleibt in {place} bis zum Ende</translation>
  </message>
  <message>
   <source>sure pct</source>
   <translation>Sicherheit in %</translation>
  </message>
  <message>
   <source>tab</source>
   <translation>Tabulator</translation>
  </message>
  <message>
   <source>taken back</source>
   <translation>zurückgenommen</translation>
  </message>
  <message>
   <source>the farm</source>
   <translation>der Hof</translation>
  </message>
  <message>
   <source>the same</source>
   <translation>gleich</translation>
  </message>
  <message>
   <source>too few birds to be calm</source>
   <translation>zu wenige Vögel, um ruhig zu sein</translation>
  </message>
  <message>
   <source>too little drinker space</source>
   <translation>zu kurze Tränke</translation>
  </message>
  <message>
   <source>too little feeder space</source>
   <translation>zu wenig Fressplatz</translation>
  </message>
  <message>
   <source>too little floor</source>
   <translation>zu wenig Fläche</translation>
  </message>
  <message>
   <source>too little heat</source>
   <translation>zu wenig Wärme</translation>
  </message>
  <message>
   <source>too many birds together</source>
   <translation>zu viele Vögel beisammen</translation>
  </message>
  <message>
   <source>too many cocks</source>
   <translation>zu viele Hähne</translation>
  </message>
  <message>
   <source>too many eggs</source>
   <translation>zu viele Eier</translation>
  </message>
  <message>
   <source>trials</source>
   <translation>Versuche</translation>
  </message>
  <message>
   <source>turning and lockdown under one lid</source>
   <translation>Wenden und Umlegen unter einem Deckel</translation>
  </message>
  <message>
   <source>two ages in one brooder</source>
   <translation>zwei Alter in einer Aufzuchtbox</translation>
  </message>
  <message>
   <source>units</source>
   <translation>Einheiten</translation>
  </message>
  <message>
   <source>way of turning</source>
   <translation>Art zu wenden</translation>
  </message>
  <message>
   <source>work from</source>
   <translation>Arbeit ab</translation>
  </message>
  <message>
   <source>work hours</source>
   <translation>Arbeitsstunden</translation>
  </message>
  <message>
   <source>worse: {clash}</source>
   <translation>schlimmer: {clash}</translation>
  </message>
  <message>
   <source>{amount}, about {birds}</source>
   <translation>{amount}, etwa {birds}</translation>
  </message>
  <message>
   <source>{batch} is new</source>
   <translation>{batch} ist neu</translation>
  </message>
  <message>
   <source>{batch}: feathered by {day}, not {old}</source>
   <translation>{batch}: befiedert bis {day}, nicht {old}</translation>
  </message>
  <message>
   <source>{batch}: hatch on {day}, not {old}</source>
   <translation>{batch}: Schlupf am {day}, nicht {old}</translation>
  </message>
  <message>
   <source>{batch}: hens lay from about {day}</source>
   <translation>{batch}: Hennen legen etwa ab {day}</translation>
  </message>
  <message>
   <source>{batch}: laying group to {place} on {day}, not {old}</source>
   <translation>{batch}: Legegruppe am {day} nach {place}, nicht {old}</translation>
  </message>
  <message>
   <source>{batch}: no longer to {place}</source>
   <translation>{batch}: nicht mehr nach {place}</translation>
  </message>
  <message>
   <source>{batch}: surplus cocks to {place} on {day}, not {old}</source>
   <translation>{batch}: überzählige Hähne am {day} nach {place}, nicht {old}</translation>
  </message>
  <message>
   <source>{batch}: to {place} on {day}</source>
   <translation>{batch}: am {day} nach {place}</translation>
  </message>
  <message>
   <source>{batch}: to {place} on {day}, not {old}</source>
   <translation>{batch}: am {day} nach {place}, nicht {old}</translation>
  </message>
  <message>
   <source>{batch}: {birds}, not {before}</source>
   <translation>{batch}: {birds}, nicht {before}</translation>
  </message>
  <message>
   <source>{birds} expected</source>
   <translation>{birds} erwartet</translation>
  </message>
  <message>
   <source>{birds} expected, {then} counted on {day}</source>
   <translation>{birds} erwartet, {then} gezählt am {day}</translation>
  </message>
  <message>
   <source>{birds} of {batch}</source>
   <translation>{birds} von {batch}</translation>
  </message>
  <message>
   <source>{birds} on {day}, {age} old</source>
   <translation>{birds} am {day}, {age} alt</translation>
  </message>
  <message>
   <source>{birds}, counted</source>
   <translation>{birds}, gezählt</translation>
  </message>
  <message>
   <source>{birds}: {sexes}</source>
   <translation>{birds}: {sexes}</translation>
  </message>
  <message>
   <source>{changes} and {pairs} of them were tried, and none helps:</source>
   <translation>{changes} und davon {pairs} wurden versucht, und nichts hilft:</translation>
  </message>
  <message>
   <source>{changes} was tried, and none helps:</source>
   <translation>{changes} wurde versucht, und nichts hilft:</translation>
  </message>
  <message>
   <source>{changes} were tried, and none helps:</source>
   <translation>{changes} wurden versucht, und nichts hilft:</translation>
  </message>
  <message>
   <source>{chores} on other days, in the calendar too</source>
   <translation>{chores} an anderen Tagen, auch im Kalender</translation>
  </message>
  <message>
   <source>{clashes} stay.</source>
   <translation>{clashes} bleiben.</translation>
  </message>
  <message>
   <source>{clashes} stays.</source>
   <translation>{clashes} bleibt.</translation>
  </message>
  <message>
   <source>{cocks} cocks</source>
   <translation>{cocks} Hähne</translation>
  </message>
  <message>
   <source>{days} earlier</source>
   <translation>{days} früher</translation>
  </message>
  <message>
   <source>{days} later</source>
   <translation>{days} später</translation>
  </message>
  <message>
   <source>{day}, about {number} chicks</source>
   <translation>{day}, etwa {number} Küken</translation>
  </message>
  <message>
   <source>{day}, {number} chicks</source>
   <translation>{day}, {number} Küken</translation>
  </message>
  <message>
   <source>{eggs} eggs laid</source>
   <translation>{eggs} Eier gelegt</translation>
  </message>
  <message>
   <source>{eggs} on {day}, {origin}</source>
   <translation>{eggs} am {day}, {origin}</translation>
  </message>
  <message>
   <source>{farm}: measures</source>
   <translation>{farm}: Kennzahlen</translation>
  </message>
  <message>
   <source>{farm}: no clash but accepted ones from {day} on, so no way out is needed.</source>
   <translation>{farm}: kein Engpass außer hingenommenen ab {day}, also ist kein Ausweg nötig.</translation>
  </message>
  <message>
   <source>{farm}: no clash from {day} on, so no way out is needed.</source>
   <translation>{farm}: kein Engpass ab {day}, also ist kein Ausweg nötig.</translation>
  </message>
  <message>
   <source>{farm}: no clash from {day} on.</source>
   <translation>{farm}: kein Engpass ab {day}.</translation>
  </message>
  <message>
   <source>{farm}: no trial. In the window, Trials › Start a trial begins one.</source>
   <translation>{farm}: kein Versuch. Im Fenster beginnt Versuche › Versuch beginnen einen.</translation>
  </message>
  <message>
   <source>{farm}: places on {day}</source>
   <translation>{farm}: Plätze am {day}</translation>
  </message>
  <message>
   <source>{farm}: ways out, each re-checked over the whole farm</source>
   <translation>{farm}: Auswege, jeder über den ganzen Hof neu geprüft</translation>
  </message>
  <message>
   <source>{farm}: {chores} in {days} from {day}</source>
   <translation>{farm}: {chores} in {days} ab {day}</translation>
  </message>
  <message>
   <source>{farm}: {clashes} from {day} on</source>
   <translation>{farm}: {clashes} ab {day}</translation>
  </message>
  <message>
   <source>{farm}: {trials} beside the plan</source>
   <translation>{farm}: {trials} neben dem Plan</translation>
  </message>
  <message>
   <source>{grams} g dressed</source>
   <translation>{grams} g geschlachtet</translation>
  </message>
  <message>
   <source>{grams} g live</source>
   <translation>{grams} g lebend</translation>
  </message>
  <message>
   <source>{grams} g together, {each} g each</source>
   <translation>{grams} g zusammen, {each} g je Vogel</translation>
  </message>
  <message>
   <source>{head}, {details}</source>
   <translation>{head}, {details}</translation>
  </message>
  <message>
   <source>{head}: {details}</source>
   <translation>{head}: {details}</translation>
  </message>
  <message>
   <source>{hens} hens</source>
   <translation>{hens} Hennen</translation>
  </message>
  <message>
   <source>{hours} worked</source>
   <translation>{hours} gearbeitet</translation>
  </message>
  <message>
   <source>{leaving} from {place}</source>
   <translation>{leaving} aus {place}</translation>
  </message>
  <message>
   <source>{many} on {day}</source>
   <translation>{many} am {day}</translation>
  </message>
  <message>
   <source>{mass} of feed</source>
   <translation>{mass} Futter</translation>
  </message>
  <message>
   <source>{names} or {last}</source>
   <translation>{names} oder {last}</translation>
  </message>
  <message>
   <source>{number} came</source>
   <translation>{number} gekommen</translation>
  </message>
  <message>
   <source>{number} clear</source>
   <translation>{number} klar</translation>
  </message>
  <message>
   <source>{number} fewer</source>
   <translation>{number} weniger</translation>
  </message>
  <message>
   <source>{number} hatched</source>
   <translation>{number} geschlüpft</translation>
  </message>
  <message>
   <source>{number} joined from {batch}</source>
   <translation>{number} von {batch} dazugekommen</translation>
  </message>
  <message>
   <source>{number} left</source>
   <translation>{number} übrig</translation>
  </message>
  <message>
   <source>{number} more</source>
   <translation>{number} mehr</translation>
  </message>
  <message>
   <source>{number} of {batch} joined {other}</source>
   <translation>{number} von {batch} zu {other} gekommen</translation>
  </message>
  <message>
   <source>{number} parted as {batch}</source>
   <translation>{number} abgeteilt als {batch}</translation>
  </message>
  <message>
   <source>{number} processed</source>
   <translation>{number} geschlachtet</translation>
  </message>
  <message>
   <source>{number} quit</source>
   <translation>{number} abgestorben</translation>
  </message>
  <message>
   <source>{number} set</source>
   <translation>{number} eingelegt</translation>
  </message>
  <message>
   <source>{number} sold</source>
   <translation>{number} verkauft</translation>
  </message>
  <message>
   <source>{number} to {batch}</source>
   <translation>{number} zu {batch}</translation>
  </message>
  <message>
   <source>{number} unsure</source>
   <translation>{number} unsicher</translation>
  </message>
  <message>
   <source>{number}: {causes}</source>
   <translation>{number}: {causes}</translation>
  </message>
  <message>
   <source>{part} chicks of {whole} eggs set</source>
   <translation>{part} Küken aus {whole} eingelegten Eiern</translation>
  </message>
  <message>
   <source>{part} chicks of {whole} fertile eggs</source>
   <translation>{part} Küken aus {whole} befruchteten Eiern</translation>
  </message>
  <message>
   <source>{part} dressed of {whole} live</source>
   <translation>{part} Schlachtgewicht von {whole} Lebendgewicht</translation>
  </message>
  <message>
   <source>{part} eggs of {whole} hens housed, counted on {days}</source>
   <translation>{part} Eier von {whole} Anfangshennen, gezählt: {days}</translation>
  </message>
  <message>
   <source>{part} eggs on {whole} hen-days</source>
   <translation>{part} Eier an {whole} Hennentagen</translation>
  </message>
  <message>
   <source>{part} of feed for {whole} eggs</source>
   <translation>{part} Futter für {whole} Eier</translation>
  </message>
  <message>
   <source>{part} of feed for {whole} of gain</source>
   <translation>{part} Futter für {whole} Zunahme</translation>
  </message>
  <message>
   <source>{part} of {whole} birds lived</source>
   <translation>{part} von {whole} Vögeln haben überlebt</translation>
  </message>
  <message>
   <source>{part} of {whole} eggs set were fertile</source>
   <translation>{part} von {whole} eingelegten Eiern waren befruchtet</translation>
  </message>
  <message>
   <source>{place} cannot be used</source>
   <translation>{place} ist nicht benutzbar</translation>
  </message>
  <message>
   <source>{place} is finished</source>
   <translation>{place} ist fertig</translation>
  </message>
  <message>
   <source>{place} is not built in time</source>
   <translation>{place} wird nicht rechtzeitig fertig</translation>
  </message>
  <message>
   <source>{place} is ready on {day}</source>
   <translation>{place} ist am {day} fertig</translation>
  </message>
  <message>
   <source>{place} is too small</source>
   <translation>{place} ist zu klein</translation>
  </message>
  <message>
   <source>{record} added</source>
   <translation>{record} hinzugefügt</translation>
  </message>
  <message>
   <source>{record} added: {what} on {day}</source>
   <translation>{record} hinzugefügt: {what} am {day}</translation>
  </message>
  <message>
   <source>{record} gone</source>
   <translation>{record} weg</translation>
  </message>
  <message>
   <source>{record}: the plan has another {fields} by now; kept, the trial brings its own.</source>
   <translation>{record}: Im Plan ist inzwischen anders: {fields}; übernommen bringt der Versuch Eigenes.</translation>
  </message>
  <message>
   <source>{record}: the plan has changed it by now; kept, the trial takes it away.</source>
   <translation>{record}: Der Plan hat es inzwischen geändert; übernommen entfernt der Versuch es.</translation>
  </message>
  <message>
   <source>{record}: the plan has taken it away by now; kept, the trial brings it back.</source>
   <translation>{record}: Der Plan hat es inzwischen entfernt; übernommen bringt der Versuch es zurück.</translation>
  </message>
  <message>
   <source>{rows}: {taken} taken in, {there} there already, {out} left out.</source>
   <translation>{rows}: {taken} übernommen, {there} schon da, {out} ausgelassen.</translation>
  </message>
  <message>
   <source>{rows}: {taken} to take, {there} there already, {out} left out.</source>
   <translation>{rows}: {taken} zu übernehmen, {there} schon da, {out} ausgelassen.</translation>
  </message>
  <message>
   <source>{tried} each leaves some of it. Change the plan by hand, or add room.</source>
   <translation>{tried} Jede lässt etwas davon übrig. Den Plan von Hand ändern oder Platz schaffen.</translation>
  </message>
  <message>
   <source>{tried} {number} would remove it but bring another clash, mostly {reasons}; the others leave some of it. Change the plan by hand, or add room.</source>
   <translation>{tried} {number} würden ihn beseitigen, aber einen anderen Engpass bringen, meist {reasons}; die anderen lassen etwas davon übrig. Den Plan von Hand ändern oder Platz schaffen.</translation>
  </message>
  <message>
   <source>{what} fewer</source>
   <translation>{what} weniger</translation>
  </message>
  <message>
   <source>{what} more</source>
   <translation>{what} mehr</translation>
  </message>
  <message>
   <source>{who} until {day}</source>
   <translation>{who} bis {day}</translation>
  </message>
  <message>
   <source>{word} {new} instead of {old}</source>
   <translation>{word} {new} statt {old}</translation>
  </message>
 </context>
</TS>
