<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source>100 × (birds at the start − birds that died) ÷ birds at the start</source>
   <translation>100 × (Vögel am Anfang − gestorbene Vögel) ÷ Vögel am Anfang</translation>
  </message>
  <message>
   <source>100 × (eggs set − clear eggs) ÷ eggs set</source>
   <translation>100 × (eingelegte Eier − klare Eier) ÷ eingelegte Eier</translation>
  </message>
  <message>
   <source>100 × chicks hatched ÷ (eggs set − clear eggs)</source>
   <translation>100 × geschlüpfte Küken ÷ (eingelegte Eier − klare Eier)</translation>
  </message>
  <message>
   <source>100 × chicks hatched ÷ eggs set</source>
   <translation>100 × geschlüpfte Küken ÷ eingelegte Eier</translation>
  </message>
  <message>
   <source>100 × dressed weight ÷ live weight</source>
   <translation>100 × Schlachtgewicht ÷ Lebendgewicht</translation>
  </message>
  <message>
   <source>100 × eggs laid ÷ (hens housed × days)</source>
   <translation>100 × gelegte Eier ÷ (Anfangshennen × Tage)</translation>
  </message>
  <message>
   <source>100 × eggs laid ÷ hen-days</source>
   <translation>100 × gelegte Eier ÷ Hennentage</translation>
  </message>
  <message>
   <source>12 × feed fed ÷ eggs laid</source>
   <translation>12 × verfüttertes Futter ÷ gelegte Eier</translation>
  </message>
  <message>
   <source>A hen-day is one hen alive on a day on which eggs were counted. A hen that dies or leaves on a day does not count on it, one that hatches, comes or joins does. A day without a count does not count either way. Eggs counted for a place are shared by the hens that lay in it.</source>
   <translation>Ein Hennentag ist eine lebende Henne an einem Tag, an dem Eier gezählt wurden. Eine Henne, die an einem Tag stirbt oder geht, zählt an ihm nicht mehr, eine, die schlüpft, kommt oder dazukommt, zählt. Ein Tag ohne Zählung zählt gar nicht. Eier, die für einen Platz gezählt wurden, teilen sich die Hennen, die dort legen.</translation>
  </message>
  <message>
   <source>Age at half lay</source>
   <translation>Alter bei halber Legeleistung</translation>
  </message>
  <message>
   <source>Age at the first egg</source>
   <translation>Alter beim ersten Ei</translation>
  </message>
  <message>
   <source>Age at which birds are feathered</source>
   <translation>Alter, in dem Vögel befiedert sind</translation>
  </message>
  <message>
   <source>Age at which birds are processed</source>
   <translation>Alter beim Schlachten</translation>
  </message>
  <message>
   <source>Age at which birds can be sexed</source>
   <translation>Alter, in dem das Geschlecht zu erkennen ist</translation>
  </message>
  <message>
   <source>Age at which birds may go outdoors</source>
   <translation>Alter, ab dem Vögel hinaus dürfen</translation>
  </message>
  <message>
   <source>Age at which cocks are mature</source>
   <translation>Alter, in dem Hähne geschlechtsreif sind</translation>
  </message>
  <message>
   <source>Age at which heat goes off</source>
   <translation>Alter, in dem die Wärme aufhört</translation>
  </message>
  <message>
   <source>Age at which starter feed ends</source>
   <translation>Alter, in dem das Starterfutter endet</translation>
  </message>
  <message>
   <source>Age from which the night limit no longer holds</source>
   <translation>Alter, ab dem die Nachtgrenze nicht mehr gilt</translation>
  </message>
  <message>
   <source>Ask a vet, not a program, about sick birds; keep them apart and see to them last.</source>
   <translation>Bei kranken Vögeln einen Tierarzt fragen, nicht ein Programm; sie getrennt halten und zuletzt versorgen.</translation>
  </message>
  <message>
   <source>At the start: those that hatched, came or joined. Culled and missing birds count as died; birds sold, processed or parted have lived. Not counted before a death or a head count is recorded.</source>
   <translation>Am Anfang: die geschlüpft, gekommen oder dazugekommen sind. Gemerzte und fehlende Vögel gelten als gestorben; verkaufte, geschlachtete und abgeteilte haben überlebt. Nicht gezählt, solange weder ein Todesfall noch eine Zählung notiert ist.</translation>
  </message>
  <message>
   <source>Bird flu: keep wild birds off feed and water, keep new birds apart, and report sudden deaths as local rules ask.</source>
   <translation>Vogelgrippe: Wildvögel von Futter und Wasser fernhalten, neue Vögel getrennt halten und plötzliche Todesfälle melden, wie es die örtlichen Regeln verlangen.</translation>
  </message>
  <message>
   <source>Bobwhite</source>
   <translation>Virginiawachtel</translation>
  </message>
  <message>
   <source>Body weight by age</source>
   <translation>Körpergewicht nach Alter</translation>
  </message>
  <message>
   <source>Brooder heat by age</source>
   <translation>Wärme in der Aufzuchtbox nach Alter</translation>
  </message>
  <message>
   <source>Button quail</source>
   <translation>Zwergwachtel</translation>
  </message>
  <message>
   <source>Chicks for each lamp or plate</source>
   <translation>Küken je Lampe oder Wärmeplatte</translation>
  </message>
  <message>
   <source>Chill carcasses at once and keep them cold. Rules on processing and selling meat differ from place to place: ask the local authority.</source>
   <translation>Schlachtkörper sofort kühlen und kalt halten. Die Regeln für Schlachten und Fleischverkauf sind von Ort zu Ort verschieden: die örtliche Behörde fragen.</translation>
  </message>
  <message>
   <source>Clear eggs are those without a germ, found at candling or when the rest is opened. Not counted before a candling is recorded.</source>
   <translation>Klare Eier sind die ohne Keim, gefunden beim Schieren oder beim Öffnen der übrigen. Nicht gezählt, solange kein Schieren notiert ist.</translation>
  </message>
  <message>
   <source>Coldest night for birds that have just gone out</source>
   <translation>Kälteste Nacht für Vögel, die gerade erst draußen sind</translation>
  </message>
  <message>
   <source>Collect often, throw cracked eggs away, keep eggs cool. Rules on selling eggs differ from place to place: ask the local authority.</source>
   <translation>Oft einsammeln, angeschlagene Eier wegwerfen, Eier kühl halten. Die Regeln für den Eierverkauf sind von Ort zu Ort verschieden: die örtliche Behörde fragen.</translation>
  </message>
  <message>
   <source>Coturnix heavy</source>
   <translation>Coturnix schwer</translation>
  </message>
  <message>
   <source>Coturnix standard</source>
   <translation>Coturnix normal</translation>
  </message>
  <message>
   <source>Day length for layers</source>
   <translation>Tageslänge für Legewachteln</translation>
  </message>
  <message>
   <source>Day of lockdown: turning stops, into the hatcher</source>
   <translation>Tag des Umlegens: nicht mehr wenden, in den Schlupfbrüter</translation>
  </message>
  <message>
   <source>Day of the first candling</source>
   <translation>Tag des ersten Schierens</translation>
  </message>
  <message>
   <source>Day of the second candling</source>
   <translation>Tag des zweiten Schierens</translation>
  </message>
  <message>
   <source>Days apart for birds brought in</source>
   <translation>Tage getrennt für hereingebrachte Vögel</translation>
  </message>
  <message>
   <source>Days between changes of bedding, brooder</source>
   <translation>Tage zwischen dem Wechsel der Einstreu, Aufzuchtbox</translation>
  </message>
  <message>
   <source>Days between changes of bedding, pen</source>
   <translation>Tage zwischen dem Wechsel der Einstreu, Voliere</translation>
  </message>
  <message>
   <source>Days between draining the water</source>
   <translation>Tage zwischen dem Leeren des Wassers</translation>
  </message>
  <message>
   <source>Days between fresh dust baths</source>
   <translation>Tage zwischen frischen Staubbädern</translation>
  </message>
  <message>
   <source>Days between moves of a pen on grass</source>
   <translation>Tage zwischen dem Versetzen einer Wiesenvoliere</translation>
  </message>
  <message>
   <source>Days empty between two batches</source>
   <translation>Leere Tage zwischen zwei Sätzen</translation>
  </message>
  <message>
   <source>Days from setting to hatch</source>
   <translation>Tage vom Einlegen bis zum Schlupf</translation>
  </message>
  <message>
   <source>Days of hardening off before going out</source>
   <translation>Tage des Abhärtens vor dem Hinausgehen</translation>
  </message>
  <message>
   <source>Days of lay before hens are replaced</source>
   <translation>Legetage, bis Hennen ersetzt werden</translation>
  </message>
  <message>
   <source>Days of long light before the first egg</source>
   <translation>Tage mit langem Licht vor dem ersten Ei</translation>
  </message>
  <message>
   <source>Days that ages in one brooder may differ</source>
   <translation>Tage, um die sich das Alter in einer Aufzuchtbox unterscheiden darf</translation>
  </message>
  <message>
   <source>Days that dry chicks may stay in the hatcher</source>
   <translation>Tage, die trockene Küken im Schlupfbrüter bleiben dürfen</translation>
  </message>
  <message>
   <source>Days that eggs may wait before setting</source>
   <translation>Tage, die Eier auf das Einlegen warten dürfen</translation>
  </message>
  <message>
   <source>Days that the old drinker stays beside the new</source>
   <translation>Tage, die die alte Tränke neben der neuen bleibt</translation>
  </message>
  <message>
   <source>Days with pebbles in the drinker</source>
   <translation>Tage mit Kieseln in der Tränke</translation>
  </message>
  <message>
   <source>Dressing</source>
   <translation>Ausschlachtung</translation>
  </message>
  <message>
   <source>Drinker space for each bird</source>
   <translation>Tränkenbreite je Vogel</translation>
  </message>
  <message>
   <source>Eggs for each 100 hens, each day, by age</source>
   <translation>Eier am Tag je 100 Hennen nach Alter</translation>
  </message>
  <message>
   <source>Feed conversion</source>
   <translation>Futterverwertung</translation>
  </message>
  <message>
   <source>Feed for each bird, each day, by age</source>
   <translation>Futter am Tag je Vogel nach Alter</translation>
  </message>
  <message>
   <source>Feed from the first to the last day on which eggs were counted; where days between have no count, the share of it that goes with the hen-days that have one.</source>
   <translation>Futter vom ersten bis zum letzten Tag, an dem Eier gezählt wurden; wo dazwischen Tage ohne Zählung sind, der Anteil, der auf die Hennentage mit Zählung fällt.</translation>
  </message>
  <message>
   <source>Feed of a grown bird, each day</source>
   <translation>Futter am Tag für einen ausgewachsenen Vogel</translation>
  </message>
  <message>
   <source>Feed per dozen eggs</source>
   <translation>Futter je Dutzend Eier</translation>
  </message>
  <message>
   <source>Feeder space for each bird, by age</source>
   <translation>Fressplatzbreite je Vogel nach Alter</translation>
  </message>
  <message>
   <source>Fertile eggs of eggs set</source>
   <translation>Befruchtete Eier von den eingelegten</translation>
  </message>
  <message>
   <source>Fertility</source>
   <translation>Befruchtung</translation>
  </message>
  <message>
   <source>Floor for each bird by age</source>
   <translation>Fläche je Vogel nach Alter</translation>
  </message>
  <message>
   <source>Gain: live weight of the birds that left and of those still there, less what they weighed at the start. Up to the last weighing, or until all have left. Birds that left unweighed take the mean of the weighing before; chicks that were not weighed, the weight of their kind. The feed of birds that died counts, their weight does not.</source>
   <translation>Zunahme: Lebendgewicht der Vögel, die gingen, und derer, die noch da sind, weniger ihr Gewicht am Anfang. Bis zum letzten Wiegen, oder bis alle fort sind. Wer ungewogen ging, zählt mit dem Mittel des Wiegens davor; ungewogene Küken mit dem Gewicht ihrer Art. Das Futter gestorbener Vögel zählt, ihr Gewicht nicht.</translation>
  </message>
  <message>
   <source>Hatch lost for each day that eggs wait (points)</source>
   <translation>Schlupfverlust je Wartetag der Eier (Prozentpunkte)</translation>
  </message>
  <message>
   <source>Hatch of eggs set</source>
   <translation>Schlupf von den eingelegten Eiern</translation>
  </message>
  <message>
   <source>Hatch of fertile</source>
   <translation>Schlupf der befruchteten</translation>
  </message>
  <message>
   <source>Hatch of fertile eggs</source>
   <translation>Schlupf von den befruchteten Eiern</translation>
  </message>
  <message>
   <source>Hatch of set</source>
   <translation>Schlupf der eingelegten</translation>
  </message>
  <message>
   <source>Hatcher humidity</source>
   <translation>Luftfeuchte im Schlupfbrüter</translation>
  </message>
  <message>
   <source>Healthy birds can carry Salmonella: wash hands with soap after touching birds, eggs or bedding, and watch children.</source>
   <translation>Gesunde Vögel können Salmonellen tragen: nach dem Anfassen von Vögeln, Eiern oder Einstreu die Hände mit Seife waschen und auf Kinder achten.</translation>
  </message>
  <message>
   <source>Heat lamps start fires: hang the lamp by a chain and a second cord, never by a clamp alone, at least {least} from bedding and better {better} from anything that burns.</source>
   <translation>Wärmelampen lösen Brände aus: die Lampe an einer Kette und einer zweiten Schnur aufhängen, nie nur an einer Klemme, mindestens {least} über der Einstreu und besser {better} von allem Brennbaren.</translation>
  </message>
  <message>
   <source>Hen-day lay</source>
   <translation>Legeleistung je Hennentag</translation>
  </message>
  <message>
   <source>Hen-housed lay</source>
   <translation>Legeleistung je Anfangshenne</translation>
  </message>
  <message>
   <source>Hens for each cock</source>
   <translation>Hennen je Hahn</translation>
  </message>
  <message>
   <source>Hens housed are those alive on the day on which they went into the place where their first eggs were counted, whether they still live or not. Days are those on which eggs were counted.</source>
   <translation>Anfangshennen sind die, die an dem Tag lebten, an dem sie an den Platz kamen, wo ihre ersten Eier gezählt wurden, ob sie noch leben oder nicht. Tage sind die, an denen Eier gezählt wurden.</translation>
  </message>
  <message>
   <source>Keeping native game birds usually needs a permit: ask the local authority before any come.</source>
   <translation>Heimisches Federwild zu halten braucht meist eine Genehmigung: die örtliche Behörde fragen, bevor welche kommen.</translation>
  </message>
  <message>
   <source>Livability</source>
   <translation>Überlebende</translation>
  </message>
  <message>
   <source>Most birds together</source>
   <translation>Meiste Vögel zusammen</translation>
  </message>
  <message>
   <source>Most floor for each bird at which a group is calm</source>
   <translation>Größte Fläche je Vogel, bei der eine Gruppe ruhig ist</translation>
  </message>
  <message>
   <source>Of all eggs that went in, clear ones too. Counted once a hatch is recorded, with as many chicks as are out.</source>
   <translation>Von allen eingelegten Eiern, auch den klaren. Gezählt, sobald ein Schlupf notiert ist, mit so vielen Küken, wie geschlüpft sind.</translation>
  </message>
  <message>
   <source>Of the birds processed of which both weights are recorded. What dressed means (skin, neck, giblets) is for you to keep the same.</source>
   <translation>Von den geschlachteten Vögeln, von denen beide Gewichte notiert sind. Was zum Schlachtgewicht gehört (Haut, Hals, Innereien), sollte immer dasselbe sein.</translation>
  </message>
  <message>
   <source>Only somebody trained kills birds, in a way that leaves them insensible until dead; knives cut. A licence may be needed: local rules come first.</source>
   <translation>Nur wer es gelernt hat, tötet Vögel, und so, dass sie bis zum Tod nichts spüren; Messer schneiden. Ein Sachkundenachweis kann nötig sein: Örtliche Regeln gehen vor.</translation>
  </message>
  <message>
   <source>Part of the hatched chicks still alive, by age</source>
   <translation>Anteil der geschlüpften Küken, die noch leben, nach Alter</translation>
  </message>
  <message>
   <source>Poultry dust and ammonia harm lungs: air the place first, wear a mask, damp the bedding.</source>
   <translation>Geflügelstaub und Ammoniak schaden der Lunge: erst lüften, Maske tragen, Einstreu anfeuchten.</translation>
  </message>
  <message>
   <source>Protein in grower feed</source>
   <translation>Eiweiß im Aufzuchtfutter</translation>
  </message>
  <message>
   <source>Protein in layer feed</source>
   <translation>Eiweiß im Legefutter</translation>
  </message>
  <message>
   <source>Protein in starter feed</source>
   <translation>Eiweiß im Starterfutter</translation>
  </message>
  <message>
   <source>Rest of shipped eggs before setting</source>
   <translation>Ruhe verschickter Eier vor dem Einlegen</translation>
  </message>
  <message>
   <source>Setter humidity</source>
   <translation>Luftfeuchte im Vorbrüter</translation>
  </message>
  <message>
   <source>Setter temperature, moving air</source>
   <translation>Temperatur im Vorbrüter, bewegte Luft</translation>
  </message>
  <message>
   <source>Times fertility it is the hatch of set. Tells how well eggs were kept and incubated, whatever the cocks did.</source>
   <translation>Mal Befruchtung ist das der Schlupf der eingelegten. Sagt, wie gut Eier gelagert und bebrütet wurden, unabhängig von den Hähnen.</translation>
  </message>
  <message>
   <source>Turns a day by hand</source>
   <translation>Wendungen am Tag von Hand</translation>
  </message>
  <message>
   <source>common practice</source>
   <translation>übliche Praxis</translation>
  </message>
  <message>
   <source>computed</source>
   <translation>errechnet</translation>
  </message>
  <message>
   <source>computed from {sources}</source>
   <translation>errechnet aus: {sources}</translation>
  </message>
  <message>
   <source>count</source>
   <translation>Anzahl</translation>
  </message>
  <message>
   <source>days</source>
   <translation>Tage</translation>
  </message>
  <message>
   <source>feed fed ÷ gain in live weight</source>
   <translation>verfüttertes Futter ÷ Zunahme an Lebendgewicht</translation>
  </message>
  <message>
   <source>from memory</source>
   <translation>aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>from {least} to {most}</source>
   <translation>von {least} bis {most}</translation>
  </message>
  <message>
   <source>gompertz</source>
   <translation>Gompertz</translation>
  </message>
  <message>
   <source>hours</source>
   <translation>Stunden</translation>
  </message>
  <message>
   <source>linear</source>
   <translation>gerade Linien</translation>
  </message>
  <message>
   <source>no date</source>
   <translation>ohne Jahr</translation>
  </message>
  <message>
   <source>published</source>
   <translation>veröffentlicht</translation>
  </message>
  <message>
   <source>step</source>
   <translation>in Stufen</translation>
  </message>
  <message>
   <source>the farm's own</source>
   <translation>vom Hof selbst</translation>
  </message>
  <message>
   <source>this farm's own</source>
   <translation>von diesem Hof selbst</translation>
  </message>
  <message>
   <source>{curve}, at {age} days: {value} cannot be used; {accepted} {unit} is possible.</source>
   <translation>{curve}, Alter in Tagen {age}: {value} geht nicht; möglich ist {accepted} {unit}.</translation>
  </message>
  <message>
   <source>{curve}: a curve needs points, each an age in days and a value in {unit}.</source>
   <translation>{curve}: Eine Kurve braucht Punkte, jeden mit einem Alter in Tagen und einem Wert in {unit}.</translation>
  </message>
  <message>
   <source>{curve}: age {age} cannot be used; an age from 0 days up is needed.</source>
   <translation>{curve}: Alter {age} geht nicht; nötig ist ein Alter ab 0 Tagen.</translation>
  </message>
  <message>
   <source>{curve}: age {later} comes after {age}; ages must rise.</source>
   <translation>{curve}: Alter {later} steht hinter {age}; das Alter muss steigen.</translation>
  </message>
  <message>
   <source>{curve}: points of age and value are needed, not one value ({value}).</source>
   <translation>{curve}: nötig sind Punkte aus Alter und Wert, nicht ein einzelner Wert ({value}).</translation>
  </message>
  <message>
   <source>{curve}: {value} at {age} days is more than before; birds do not come back to life.</source>
   <translation>{curve}: {value} ist im Alter {age} mehr als davor; tote Vögel werden nicht wieder lebendig.</translation>
  </message>
  <message>
   <source>{figure}: one value is needed, {accepted} {unit}, not points.</source>
   <translation>{figure}: nötig ist ein Wert, {accepted} {unit}, keine Punkte.</translation>
  </message>
  <message>
   <source>{figure}: {value} cannot be used; at most {most} is possible ({later}).</source>
   <translation>{figure}: {value} geht nicht; möglich ist höchstens {most} ({later}).</translation>
  </message>
  <message>
   <source>{figure}: {value} cannot be used; less than {most} is possible ({later}).</source>
   <translation>{figure}: {value} geht nicht; möglich ist weniger als {most} ({later}).</translation>
  </message>
  <message>
   <source>{figure}: {value} cannot be used; {accepted} {unit} is possible.</source>
   <translation>{figure}: {value} geht nicht; möglich ist {accepted} {unit}.</translation>
  </message>
  <message>
   <source>{kind}: it has no figure or curve “{key}” that could be replaced.</source>
   <translation>{kind}: Es gibt keinen Richtwert und keine Kurve „{key}“ zum Ersetzen.</translation>
  </message>
  <message>
   <source>{kind}: “{key}” is replaced twice; once is possible.</source>
   <translation>{kind}: „{key}“ ist zweimal ersetzt; möglich ist einmal.</translation>
  </message>
  <message>
   <source>{name} = {formula}
{note}
Source: {source}</source>
   <translation>{name} = {formula}
{note}
Quelle: {source}</translation>
  </message>
  <message>
   <source>{sources}; taken as {basis}</source>
   <translation>{sources}; genommen als: {basis}</translation>
  </message>
 </context>
</TS>
