<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source> From {count} on a group is calm in it.</source>
   <translation> Ab {count} ist eine Gruppe darin ruhig.</translation>
  </message>
  <message>
   <source> day</source>
   <translation> Tag</translation>
  </message>
  <message>
   <source> days</source>
   <translation> Tage</translation>
  </message>
  <message>
   <source> hours</source>
   <translation> Stunden</translation>
  </message>
  <message>
   <source> hours a day</source>
   <translation> Stunden am Tag</translation>
  </message>
  <message>
   <source> hours a week</source>
   <translation> Stunden die Woche</translation>
  </message>
  <message>
   <source> months</source>
   <translation> Monate</translation>
  </message>
  <message>
   <source> o'clock</source>
   <translation> Uhr</translation>
  </message>
  <message>
   <source> of 100 hatches</source>
   <translation> von 100 Schlüpfen</translation>
  </message>
  <message>
   <source> of the plan, not of the trial,</source>
   <translation> des Plans, nicht des Versuchs,</translation>
  </message>
  <message>
   <source> sq ft</source>
   <translation> Quadratfuß</translation>
  </message>
  <message>
   <source> weeks</source>
   <translation> Wochen</translation>
  </message>
  <message>
   <source> years</source>
   <translation> Jahre</translation>
  </message>
  <message>
   <source>&amp;About Quailsched</source>
   <translation>&amp;Über Quailsched</translation>
  </message>
  <message>
   <source>&amp;Add a chore…</source>
   <translation>Eine Aufga&amp;be hinzufügen …</translation>
  </message>
  <message>
   <source>&amp;Age when they come</source>
   <translation>&amp;Alter bei der Ankunft</translation>
  </message>
  <message>
   <source>&amp;Another day…</source>
   <translation>Ein &amp;anderer Tag …</translation>
  </message>
  <message>
   <source>&amp;Batch</source>
   <translation>&amp;Satz</translation>
  </message>
  <message>
   <source>&amp;Birds</source>
   <translation>&amp;Vögel</translation>
  </message>
  <message>
   <source>&amp;Books</source>
   <translation>&amp;Bücher</translation>
  </message>
  <message>
   <source>&amp;Building</source>
   <translation>&amp;Bauen</translation>
  </message>
  <message>
   <source>&amp;Calendar file…</source>
   <translation>&amp;Kalenderdatei …</translation>
  </message>
  <message>
   <source>&amp;Change</source>
   <translation>Ä&amp;ndern</translation>
  </message>
  <message>
   <source>&amp;Change this chore…</source>
   <translation>Diese Aufgabe &amp;ändern …</translation>
  </message>
  <message>
   <source>&amp;Chicks</source>
   <translation>&amp;Küken</translation>
  </message>
  <message>
   <source>&amp;Clean-out</source>
   <translation>&amp;Ausmisten</translation>
  </message>
  <message>
   <source>&amp;Colours as the desktop</source>
   <translation>&amp;Farben wie der Schreibtisch</translation>
  </message>
  <message>
   <source>&amp;Come on</source>
   <translation>&amp;Kommen am</translation>
  </message>
  <message>
   <source>&amp;Compare with the plan</source>
   <translation>Mit dem Plan &amp;vergleichen</translation>
  </message>
  <message>
   <source>&amp;Correct…</source>
   <translation>&amp;Berichtigen …</translation>
  </message>
  <message>
   <source>&amp;Day</source>
   <translation>&amp;Tag</translation>
  </message>
  <message>
   <source>&amp;Details beside it, or not</source>
   <translation>E&amp;inzelheiten daneben, oder nicht</translation>
  </message>
  <message>
   <source>&amp;Drop it</source>
   <translation>Ver&amp;werfen</translation>
  </message>
  <message>
   <source>&amp;Egg places</source>
   <translation>&amp;Eiplätze</translation>
  </message>
  <message>
   <source>&amp;Eggs</source>
   <translation>&amp;Eier</translation>
  </message>
  <message>
   <source>&amp;Example farm</source>
   <translation>&amp;Beispielhof</translation>
  </message>
  <message>
   <source>&amp;Farm</source>
   <translation>&amp;Hof</translation>
  </message>
  <message>
   <source>&amp;Find…</source>
   <translation>Su&amp;chen …</translation>
  </message>
  <message>
   <source>&amp;First on</source>
   <translation>Zuerst &amp;am</translation>
  </message>
  <message>
   <source>&amp;Floor</source>
   <translation>&amp;Fläche</translation>
  </message>
  <message>
   <source>&amp;From</source>
   <translation>&amp;Herkunft</translation>
  </message>
  <message>
   <source>&amp;Give to</source>
   <translation>&amp;Geben an</translation>
  </message>
  <message>
   <source>&amp;Go to a day…</source>
   <translation>&amp;Zu einem Tag …</translation>
  </message>
  <message>
   <source>&amp;Heat sources</source>
   <translation>&amp;Wärmequellen</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>&amp;Hilfe</translation>
  </message>
  <message>
   <source>&amp;Hens</source>
   <translation>&amp;Hennen</translation>
  </message>
  <message>
   <source>&amp;History…</source>
   <translation>&amp;Geschichte …</translation>
  </message>
  <message>
   <source>&amp;How many</source>
   <translation>&amp;Wie viele</translation>
  </message>
  <message>
   <source>&amp;Import a document…</source>
   <translation>Dokument &amp;importieren …</translation>
  </message>
  <message>
   <source>&amp;Into</source>
   <translation>&amp;Nach</translation>
  </message>
  <message>
   <source>&amp;Join</source>
   <translation>&amp;Zu</translation>
  </message>
  <message>
   <source>&amp;Join another batch…</source>
   <translation>Z&amp;u einem anderen Satz …</translation>
  </message>
  <message>
   <source>&amp;Keep it</source>
   <translation>Über&amp;nehmen</translation>
  </message>
  <message>
   <source>&amp;Keys and mouse</source>
   <translation>&amp;Tasten und Maus</translation>
  </message>
  <message>
   <source>&amp;Kind</source>
   <translation>&amp;Art</translation>
  </message>
  <message>
   <source>&amp;Kind of chart</source>
   <translation>&amp;Diagramm</translation>
  </message>
  <message>
   <source>&amp;Latitude</source>
   <translation>&amp;Breite</translation>
  </message>
  <message>
   <source>&amp;Leave out…</source>
   <translation>Aus&amp;lassen …</translation>
  </message>
  <message>
   <source>&amp;Light</source>
   <translation>Hell (&amp;L)</translation>
  </message>
  <message>
   <source>&amp;Light by lamps</source>
   <translation>&amp;Licht durch Lampen</translation>
  </message>
  <message>
   <source>&amp;Name</source>
   <translation>&amp;Name</translation>
  </message>
  <message>
   <source>&amp;New farm…</source>
   <translation>&amp;Neuer Hof …</translation>
  </message>
  <message>
   <source>&amp;Next clash</source>
   <translation>Nächster Engp&amp;ass</translation>
  </message>
  <message>
   <source>&amp;Number</source>
   <translation>&amp;Anzahl</translation>
  </message>
  <message>
   <source>&amp;Of</source>
   <translation>&amp;von</translation>
  </message>
  <message>
   <source>&amp;On</source>
   <translation>&amp;Auf</translation>
  </message>
  <message>
   <source>&amp;Open farm…</source>
   <translation>Hof ö&amp;ffnen …</translation>
  </message>
  <message>
   <source>&amp;Place</source>
   <translation>&amp;Platz</translation>
  </message>
  <message>
   <source>&amp;Previous clash</source>
   <translation>&amp;Voriger Engpass</translation>
  </message>
  <message>
   <source>&amp;Print…</source>
   <translation>&amp;Drucken …</translation>
  </message>
  <message>
   <source>&amp;Put off</source>
   <translation>&amp;Verschieben</translation>
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>B&amp;eenden</translation>
  </message>
  <message>
   <source>&amp;Record…</source>
   <translation>Ein&amp;tragen …</translation>
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation>&amp;Wiederholen</translation>
  </message>
  <message>
   <source>&amp;Remove this chore…</source>
   <translation>Diese Aufgabe &amp;entfernen …</translation>
  </message>
  <message>
   <source>&amp;Rename…</source>
   <translation>&amp;Umbenennen …</translation>
  </message>
  <message>
   <source>&amp;Repeat</source>
   <translation>Wieder&amp;holen</translation>
  </message>
  <message>
   <source>&amp;Save a picture…</source>
   <translation>Bild &amp;speichern …</translation>
  </message>
  <message>
   <source>&amp;Season</source>
   <translation>&amp;Saison</translation>
  </message>
  <message>
   <source>&amp;Set on</source>
   <translation>&amp;Einlegen am</translation>
  </message>
  <message>
   <source>&amp;Show</source>
   <translation>An&amp;sicht</translation>
  </message>
  <message>
   <source>&amp;Show the photo</source>
   <translation>Foto &amp;zeigen</translation>
  </message>
  <message>
   <source>&amp;Start a trial…</source>
   <translation>Versuch &amp;beginnen …</translation>
  </message>
  <message>
   <source>&amp;Take back</source>
   <translation>Zu&amp;rücknehmen</translation>
  </message>
  <message>
   <source>&amp;Take in</source>
   <translation>Über&amp;nehmen</translation>
  </message>
  <message>
   <source>&amp;Take in {rows}</source>
   <translation>{rows} über&amp;nehmen</translation>
  </message>
  <message>
   <source>&amp;Tell me in the morning how many chores are due</source>
   <translation>Am Morgen &amp;melden, wie viele Aufgaben anstehen</translation>
  </message>
  <message>
   <source>&amp;Tomorrow</source>
   <translation>&amp;Morgen</translation>
  </message>
  <message>
   <source>&amp;Trials</source>
   <translation>&amp;Versuche</translation>
  </message>
  <message>
   <source>&amp;Undo</source>
   <translation>&amp;Zurücknehmen</translation>
  </message>
  <message>
   <source>&amp;Units</source>
   <translation>&amp;Einheiten</translation>
  </message>
  <message>
   <source>&amp;Weeks of chores</source>
   <translation>&amp;Wochen der Aufgaben</translation>
  </message>
  <message>
   <source>&amp;Weight</source>
   <translation>&amp;Gewicht</translation>
  </message>
  <message>
   <source>&amp;What</source>
   <translation>&amp;Was</translation>
  </message>
  <message>
   <source>&amp;What it is</source>
   <translation>&amp;Was es ist</translation>
  </message>
  <message>
   <source>&amp;Why</source>
   <translation>&amp;Warum</translation>
  </message>
  <message>
   <source>&amp;Yours</source>
   <translation>&amp;Deiner</translation>
  </message>
  <message>
   <source>, {grams} g</source>
   <translation>, {grams} g</translation>
  </message>
  <message>
   <source>, {number} of them new</source>
   <translation>, davon neu: {number}</translation>
  </message>
  <message>
   <source>; and {number} more, see Today</source>
   <translation>; und {number} mehr, siehe Heute</translation>
  </message>
  <message>
   <source>&lt;h3&gt;Keys and mouse&lt;/h3&gt;
&lt;p&gt;&lt;b&gt;Left, Right&lt;/b&gt; go through the batches, &lt;b&gt;Up, Down&lt;/b&gt; or &lt;b&gt;F3&lt;/b&gt; through the clashes.&lt;br&gt;
&lt;b&gt;Alt+Left, Alt+Right&lt;/b&gt; move the picked batch by a day, with &lt;b&gt;Shift&lt;/b&gt; by a week.&lt;br&gt;
&lt;b&gt;Ctrl+Shift+A&lt;/b&gt; accepts the picked clash, if it is one to watch; &lt;b&gt;Return&lt;/b&gt; says why, &lt;b&gt;Esc&lt;/b&gt; leaves it.&lt;br&gt;
&lt;b&gt;Return&lt;/b&gt; or a double click opens it, &lt;b&gt;Ctrl+E&lt;/b&gt; too; &lt;b&gt;Ctrl+Del&lt;/b&gt; removes it. &lt;b&gt;Esc&lt;/b&gt; lets it go.&lt;br&gt;
&lt;b&gt;+&lt;/b&gt; and &lt;b&gt;−&lt;/b&gt; zoom, as does Ctrl and the wheel about the pointer; &lt;b&gt;Ctrl+0&lt;/b&gt; fits the season.&lt;br&gt;
&lt;b&gt;Alt+1&lt;/b&gt; to &lt;b&gt;Alt+5&lt;/b&gt; show a week to three years; two fingers on a touchpad push the season along or zoom it.&lt;br&gt;
&lt;b&gt;Ctrl+F&lt;/b&gt; finds a batch, a place or a day, &lt;b&gt;Ctrl+G&lt;/b&gt; a day: 12 Apr, in 3 weeks, week 15, day 30 of Clover.&lt;br&gt;
In the strip with all days push the frame along, or pull at its edges; with keys, &lt;b&gt;Left, Right, + and −&lt;/b&gt;.&lt;br&gt;
&lt;b&gt;F9&lt;/b&gt; shows what is picked beside the season, or the season alone.&lt;br&gt;
&lt;b&gt;Home&lt;/b&gt; goes to today, &lt;b&gt;Page Up&lt;/b&gt; and &lt;b&gt;Page Down&lt;/b&gt; through time, with &lt;b&gt;Shift&lt;/b&gt; through the lanes;
drag the paper to push it along.&lt;br&gt;
&lt;b&gt;Ctrl+Shift+T&lt;/b&gt; starts a trial, &lt;b&gt;Ctrl+Shift+C&lt;/b&gt; compares it, &lt;b&gt;Ctrl+Shift+P&lt;/b&gt; goes back to the plan.&lt;br&gt;
A filled red bar below a lane stops the plan, a broken outline is to be watched, a grey one is accepted.&lt;br&gt;
Drag a band to move its batch, its edge to leave a place earlier or later, or into another lane; up or down inside
its lane it splits. &lt;b&gt;Shift+F10&lt;/b&gt; has all of that as a menu. &lt;b&gt;Shift&lt;/b&gt; keeps to weeks, &lt;b&gt;Esc&lt;/b&gt; lets go.&lt;br&gt;
&lt;b&gt;Ctrl+L&lt;/b&gt; changes between lanes of places and of batches.&lt;br&gt;
Double click a place's name to change it. The Setup view has everything as tables.&lt;br&gt;
&lt;b&gt;Ctrl+2&lt;/b&gt; shows today: &lt;b&gt;Space&lt;/b&gt; ticks, &lt;b&gt;P, L, G&lt;/b&gt; put off, leave out, give. &lt;b&gt;F8&lt;/b&gt; takes a count.&lt;br&gt;
&lt;b&gt;Ctrl+R&lt;/b&gt; records any count by a form, &lt;b&gt;Ctrl+Shift+R&lt;/b&gt; lists all, to correct and take back.&lt;/p&gt;</source>
   <translation>&lt;h3&gt;Tasten und Maus&lt;/h3&gt;
&lt;p&gt;&lt;b&gt;Links, Rechts&lt;/b&gt; gehen durch die Sätze, &lt;b&gt;Auf, Ab&lt;/b&gt; oder &lt;b&gt;F3&lt;/b&gt; durch die Engpässe.&lt;br&gt;
&lt;b&gt;Alt+Links, Alt+Rechts&lt;/b&gt; verschieben den ausgewählten Satz um einen Tag, mit &lt;b&gt;Umschalt&lt;/b&gt; um eine Woche.&lt;br&gt;
&lt;b&gt;Strg+Umschalt+A&lt;/b&gt; nimmt den ausgewählten Engpass hin, wenn er zu beachten ist; &lt;b&gt;Eingabe&lt;/b&gt; sagt warum, &lt;b&gt;Esc&lt;/b&gt; lässt es.&lt;br&gt;
&lt;b&gt;Eingabe&lt;/b&gt; oder ein Doppelklick öffnet, auch &lt;b&gt;Strg+E&lt;/b&gt;; &lt;b&gt;Strg+Entf&lt;/b&gt; entfernt. &lt;b&gt;Esc&lt;/b&gt; lässt los.&lt;br&gt;
&lt;b&gt;+&lt;/b&gt; und &lt;b&gt;−&lt;/b&gt; vergrößern und verkleinern, ebenso Strg und das Rad um den Zeiger; &lt;b&gt;Strg+0&lt;/b&gt; passt die Saison ein.&lt;br&gt;
&lt;b&gt;Alt+1&lt;/b&gt; bis &lt;b&gt;Alt+5&lt;/b&gt; zeigen eine Woche bis drei Jahre; zwei Finger auf einem Touchpad schieben die Saison oder zoomen.&lt;br&gt;
&lt;b&gt;Strg+F&lt;/b&gt; sucht einen Satz, einen Platz oder einen Tag, &lt;b&gt;Strg+G&lt;/b&gt; einen Tag: 12. Apr, in 3 Wochen, KW 15, Tag 30 von Clover.&lt;br&gt;
Im Streifen mit allen Tagen den Rahmen schieben oder an den Rändern ziehen; mit Tasten &lt;b&gt;Links, Rechts, + und −&lt;/b&gt;.&lt;br&gt;
&lt;b&gt;F9&lt;/b&gt; zeigt neben der Saison, was ausgewählt ist, oder die Saison allein.&lt;br&gt;
&lt;b&gt;Pos1&lt;/b&gt; geht zu heute, &lt;b&gt;Bild auf&lt;/b&gt; und &lt;b&gt;Bild ab&lt;/b&gt; durch die Zeit, mit &lt;b&gt;Umschalt&lt;/b&gt; durch die Bahnen; das Papier lässt sich ziehen.&lt;br&gt;
&lt;b&gt;Strg+Umschalt+T&lt;/b&gt; beginnt einen Versuch, &lt;b&gt;Strg+Umschalt+C&lt;/b&gt; vergleicht ihn, &lt;b&gt;Strg+Umschalt+P&lt;/b&gt; geht zum Plan zurück.&lt;br&gt;
Ein gefüllter roter Balken unter einer Bahn verhindert den Plan, ein gestrichelter Umriss ist zu beachten, ein grauer ist hingenommen.&lt;br&gt;
Ein Band ziehen verschiebt seinen Satz, sein Rand lässt ihn früher oder später gehen, in einer anderen Bahn wechselt er den Platz; hinauf oder
hinunter in seiner Bahn teilt es ihn. &lt;b&gt;Umschalt+F10&lt;/b&gt; hat all das als Menü. &lt;b&gt;Umschalt&lt;/b&gt; bleibt bei Wochen, &lt;b&gt;Esc&lt;/b&gt; lässt los. &lt;b&gt;Strg+L&lt;/b&gt; wechselt zwischen Bahnen der
Plätze und der Sätze.&lt;br&gt;
Ein Doppelklick auf den Namen eines Platzes ändert ihn. Die Einrichtung hat alles als Tabellen.&lt;br&gt;
&lt;b&gt;Strg+2&lt;/b&gt; zeigt heute: &lt;b&gt;Leertaste&lt;/b&gt; hakt ab, &lt;b&gt;P, L, G&lt;/b&gt; verschieben, auslassen, geben; &lt;b&gt;F8&lt;/b&gt; trägt ein.&lt;br&gt;
&lt;b&gt;Strg+R&lt;/b&gt; trägt jede Zählung mit einem Formular ein, &lt;b&gt;Strg+Umschalt+R&lt;/b&gt; zeigt alle, zum Berichtigen und Zurücknehmen.&lt;/p&gt;</translation>
  </message>
  <message>
   <source>&lt;h3&gt;Quailsched {version}&lt;/h3&gt;
&lt;p&gt;Plans a season of quail: which batches will want the same floor, and when to set the next eggs.&lt;/p&gt;
&lt;p&gt;Its figures carry their sources; a plan is no promise. Heat lamps start fires, birds can carry Salmonella,
dust harms lungs, and killing is for those who are able and allowed. Local rules on keeping, processing and
selling come first. Ask a vet, not a program, about sick birds.&lt;/p&gt;</source>
   <translation>&lt;h3&gt;Quailsched {version}&lt;/h3&gt;
&lt;p&gt;Plant eine Saison mit Wachteln: welche Sätze dieselbe Fläche wollen werden und wann die nächsten Eier einzulegen sind.&lt;/p&gt;
&lt;p&gt;Seine Richtwerte nennen ihre Quellen; ein Plan ist kein Versprechen. Wärmelampen lösen Brände aus, Vögel können Salmonellen tragen,
Staub schadet der Lunge, und Töten ist nur für die, die es können und dürfen. Örtliche Regeln zum Halten, Schlachten und
Verkaufen gehen vor. Bei kranken Vögeln einen Tierarzt fragen, nicht ein Programm.&lt;/p&gt;</translation>
  </message>
  <message>
   <source>&lt;h3&gt;Your own farm in five steps&lt;/h3&gt;
&lt;ol&gt;
&lt;li&gt;&lt;b&gt;Farm › New farm&lt;/b&gt; (Ctrl+N): a name and a file. Every change is saved at once; there is no Save.&lt;/li&gt;
&lt;li&gt;&lt;b&gt;Change › Add a place&lt;/b&gt; (Ctrl+P): what holds your eggs, the brooder, the pen. Floor as width times length.&lt;/li&gt;
&lt;li&gt;&lt;b&gt;Change › Farm: name, units, nights&lt;/b&gt;: the lows of your nights, so that cold moves show.&lt;/li&gt;
&lt;li&gt;&lt;b&gt;Change › Add a batch&lt;/b&gt; (Ctrl+B): how many eggs, and when. The route through your places is filled in.&lt;/li&gt;
&lt;li&gt;Look at what is red: pick it, read why, change the batch (Ctrl+E) or move it by a day (Alt+Left, Alt+Right).&lt;/li&gt;
&lt;/ol&gt;
&lt;p&gt;Ctrl+Z takes every step back, even tomorrow. What you see first is an example; change in it what you like.&lt;/p&gt;</source>
   <translation>&lt;h3&gt;Der eigene Hof in fünf Schritten&lt;/h3&gt;
&lt;ol&gt;
&lt;li&gt;&lt;b&gt;Hof › Neuer Hof&lt;/b&gt; (Strg+N): ein Name und eine Datei. Jede Änderung ist sofort gespeichert; ein Speichern gibt es nicht.&lt;/li&gt;
&lt;li&gt;&lt;b&gt;Ändern › Platz hinzufügen&lt;/b&gt; (Strg+P): was die Eier hält, die Aufzuchtbox, die Voliere. Fläche als Breite mal Länge.&lt;/li&gt;
&lt;li&gt;&lt;b&gt;Ändern › Hof: Name, Einheiten, Nächte&lt;/b&gt;: wie kalt die Nächte werden, damit kalte Umzüge sich zeigen.&lt;/li&gt;
&lt;li&gt;&lt;b&gt;Ändern › Satz hinzufügen&lt;/b&gt; (Strg+B): wie viele Eier und wann. Der Weg durch die Plätze wird ausgefüllt.&lt;/li&gt;
&lt;li&gt;Ansehen, was rot ist: auswählen, lesen warum, den Satz ändern (Strg+E) oder um einen Tag verschieben (Alt+Links, Alt+Rechts).&lt;/li&gt;
&lt;/ol&gt;
&lt;p&gt;Strg+Z nimmt jeden Schritt zurück, auch morgen noch. Was du zuerst siehst, ist ein Beispiel; ändere darin, was du willst.&lt;/p&gt;</translation>
  </message>
  <message>
   <source>A &amp;morning notice…</source>
   <translation>Eine &amp;Meldung am Morgen …</translation>
  </message>
  <message>
   <source>A batch, a place or a day, by typing</source>
   <translation>Ein Satz, ein Platz oder ein Tag, durch Tippen</translation>
  </message>
  <message>
   <source>A click sorts by this column, and so does Ctrl+Up or Ctrl+Down in one of its cells.</source>
   <translation>Ein Klick sortiert nach dieser Spalte, ebenso Strg+Auf oder Strg+Ab in einer ihrer Zellen.</translation>
  </message>
  <message>
   <source>A cold night in {month}</source>
   <translation>Eine kalte Nacht im {month}</translation>
  </message>
  <message>
   <source>A count of any sort. Key: Ctrl+R</source>
   <translation>Eine Zählung jeder Art. Taste: Strg+R</translation>
  </message>
  <message>
   <source>A count of any sort: what has happened, and when</source>
   <translation>Eine Zählung jeder Art: was geschehen ist, und wann</translation>
  </message>
  <message>
   <source>A count says that it is done. Undo it, or take the count back, if it is not.</source>
   <translation>Ein Eintrag sagt, dass sie erledigt ist. Wenn nicht: den Schritt zurücknehmen oder den Eintrag zurücknehmen.</translation>
  </message>
  <message>
   <source>A day earlier</source>
   <translation>Einen Tag früher</translation>
  </message>
  <message>
   <source>A day later</source>
   <translation>Einen Tag später</translation>
  </message>
  <message>
   <source>A day: 12 Apr, in 3 weeks, Thursday, week 15, day 30 of Clover</source>
   <translation>Ein Tag: 12. Apr, in 3 Wochen, Donnerstag, Woche 15, Tag 30 von Clover</translation>
  </message>
  <message>
   <source>A drawing, sharp at any size (*.svg)</source>
   <translation>Eine Zeichnung, scharf in jeder Größe (*.svg)</translation>
  </message>
  <message>
   <source>A grown-up: may do what needs knives</source>
   <translation>Erwachsen: darf, was Messer braucht</translation>
  </message>
  <message>
   <source>A month in view</source>
   <translation>Einen Monat zeigen</translation>
  </message>
  <message>
   <source>A name, or a day such as 12 Apr, in 3 weeks, Thursday, week 15, day 30 of Clover (Ctrl+F)</source>
   <translation>Ein Name, oder ein Tag wie 12. Apr, in 3 Wochen, Donnerstag, Woche 15, Tag 30 von Clover (Strg+F)</translation>
  </message>
  <message>
   <source>A name, or a day: 12 Apr, in 3 weeks, Thursday, week 15, day 30 of Clover</source>
   <translation>Ein Name oder ein Tag: 12. Apr, in 3 Wochen, Donnerstag, Woche 15, Tag 30 von Clover</translation>
  </message>
  <message>
   <source>A page (*.pdf)</source>
   <translation>Eine Seite (*.pdf)</translation>
  </message>
  <message>
   <source>A part of it becomes a batch of its own</source>
   <translation>Ein Teil davon wird ein eigener Satz</translation>
  </message>
  <message>
   <source>A photo</source>
   <translation>Ein Foto</translation>
  </message>
  <message>
   <source>A picture (*.png)</source>
   <translation>Ein Bild (*.png)</translation>
  </message>
  <message>
   <source>A setter, hatcher, cabinet, brooder or pen</source>
   <translation>Vorbrüter, Schlupfbrüter, Kombibrüter, Aufzuchtbox oder Voliere</translation>
  </message>
  <message>
   <source>A week in view</source>
   <translation>Eine Woche zeigen</translation>
  </message>
  <message>
   <source>A year in view</source>
   <translation>Ein Jahr zeigen</translation>
  </message>
  <message>
   <source>A&amp;ccept the clash that is picked…</source>
   <translation>Ausgewählten Engpass hin&amp;nehmen …</translation>
  </message>
  <message>
   <source>About Quailsched</source>
   <translation>Über Quailsched</translation>
  </message>
  <message>
   <source>Accept</source>
   <translation>Hinnehmen</translation>
  </message>
  <message>
   <source>Accept…</source>
   <translation>Hinnehmen …</translation>
  </message>
  <message>
   <source>Add a &amp;batch…</source>
   <translation>&amp;Satz hinzufügen …</translation>
  </message>
  <message>
   <source>Add a &amp;place…</source>
   <translation>&amp;Platz hinzufügen …</translation>
  </message>
  <message>
   <source>Add a batch</source>
   <translation>Satz hinzufügen</translation>
  </message>
  <message>
   <source>Add a batch…</source>
   <translation>Satz hinzufügen …</translation>
  </message>
  <message>
   <source>Add a chore</source>
   <translation>Eine Aufgabe hinzufügen</translation>
  </message>
  <message>
   <source>Add a chore…</source>
   <translation>Aufgabe hinzufügen …</translation>
  </message>
  <message>
   <source>Add a p&amp;erson…</source>
   <translation>P&amp;erson hinzufügen …</translation>
  </message>
  <message>
   <source>Add a person</source>
   <translation>Person hinzufügen</translation>
  </message>
  <message>
   <source>Add a place</source>
   <translation>Platz hinzufügen</translation>
  </message>
  <message>
   <source>Add a stay</source>
   <translation>Aufenthalt hinzufügen</translation>
  </message>
  <message>
   <source>Add another place</source>
   <translation>Noch einen Platz hinzufügen</translation>
  </message>
  <message>
   <source>Add days away</source>
   <translation>Tage der Abwesenheit hinzufügen</translation>
  </message>
  <message>
   <source>Add days out of use</source>
   <translation>Tage außer Betrieb hinzufügen</translation>
  </message>
  <message>
   <source>Add what your birds live in: a setter or a cabinet for the eggs, a brooder for the chicks, a pen for grown birds. Then add a batch: its days follow by themselves.</source>
   <translation>Hinzufügen, worin die Vögel leben: einen Vorbrüter oder Kombibrüter für die Eier, eine Aufzuchtbox für die Küken, eine Voliere für die ausgewachsenen Vögel. Dann einen Satz hinzufügen: Seine Tage ergeben sich von selbst.</translation>
  </message>
  <message>
   <source>Add…</source>
   <translation>Hinzufügen …</translation>
  </message>
  <message>
   <source>Age and value pairs, such as 0:103 10:155 42:310</source>
   <translation>Paare aus Alter und Wert, etwa 0:103 10:155 42:310</translation>
  </message>
  <message>
   <source>Age in days</source>
   <translation>Alter in Tagen</translation>
  </message>
  <message>
   <source>All clashes</source>
   <translation>Alle Engpässe</translation>
  </message>
  <message>
   <source>All clashes of the trial</source>
   <translation>Alle Engpässe des Versuchs</translation>
  </message>
  <message>
   <source>All counts, to correct and to take back</source>
   <translation>Alle Zählungen, zum Berichtigen und Zurücknehmen</translation>
  </message>
  <message>
   <source>All counts, to correct and to take back. Key: Ctrl+Shift+R</source>
   <translation>Alle Zählungen, zum Berichtigen und Zurücknehmen. Taste: Strg+Umschalt+R</translation>
  </message>
  <message>
   <source>All days; left and right move what is in view, plus and minus zoom</source>
   <translation>Alle Tage; links und rechts bewegen den Ausschnitt, Plus und Minus vergrößern und verkleinern</translation>
  </message>
  <message>
   <source>All eggs counted for the batch</source>
   <translation>Alle Eier, die für den Satz gezählt wurden</translation>
  </message>
  <message>
   <source>All feed recorded for the batch</source>
   <translation>Alles Futter, das für den Satz notiert ist</translation>
  </message>
  <message>
   <source>All hours of work recorded for the batch</source>
   <translation>Alle Arbeitsstunden, die für den Satz notiert sind</translation>
  </message>
  <message>
   <source>All that dragging a band does</source>
   <translation>Alles, was das Ziehen eines Bandes tut</translation>
  </message>
  <message>
   <source>Another file…</source>
   <translation>Andere Datei…</translation>
  </message>
  <message>
   <source>Another name for the trial</source>
   <translation>Ein anderer Name für den Versuch</translation>
  </message>
  <message>
   <source>Another place</source>
   <translation>Ein anderer Platz</translation>
  </message>
  <message>
   <source>Anybody</source>
   <translation>Irgendwer</translation>
  </message>
  <message>
   <source>April</source>
   <translation>April</translation>
  </message>
  <message>
   <source>As a &amp;table</source>
   <translation>Als &amp;Tabelle</translation>
  </message>
  <message>
   <source>As it stands</source>
   <translation>Wie es dasteht</translation>
  </message>
  <message>
   <source>As the desktop is set</source>
   <translation>Wie der Schreibtisch eingestellt ist</translation>
  </message>
  <message>
   <source>At most</source>
   <translation>Höchstens</translation>
  </message>
  <message>
   <source>August</source>
   <translation>August</translation>
  </message>
  <message>
   <source>Away</source>
   <translation>Abwesend</translation>
  </message>
  <message>
   <source>B&amp;y</source>
   <translation>Vo&amp;n wem</translation>
  </message>
  <message>
   <source>Back to the plan</source>
   <translation>Zurück zum Plan</translation>
  </message>
  <message>
   <source>Back to today (Ctrl+T)</source>
   <translation>Zurück zu heute (Strg+T)</translation>
  </message>
  <message>
   <source>Back to {day}</source>
   <translation>Zurück auf {day}</translation>
  </message>
  <message>
   <source>Batch</source>
   <translation>Satz</translation>
  </message>
  <message>
   <source>Batch {batch}, {what}, {start}</source>
   <translation>Satz {batch}, {what}, {start}</translation>
  </message>
  <message>
   <source>Batches</source>
   <translation>Sätze</translation>
  </message>
  <message>
   <source>Begin with your places</source>
   <translation>Mit den Plätzen anfangen</translation>
  </message>
  <message>
   <source>Begin your own farm in a file of its own</source>
   <translation>Den eigenen Hof in einer eigenen Datei beginnen</translation>
  </message>
  <message>
   <source>Being built, ready on</source>
   <translation>Im Bau, fertig am</translation>
  </message>
  <message>
   <source>Best: up to {count} on {day}.</source>
   <translation>Am besten: bis zu {count} am {day}.</translation>
  </message>
  <message>
   <source>Birds feel the nights here</source>
   <translation>Hier spüren Vögel die Nächte</translation>
  </message>
  <message>
   <source>Birds of the batch that is picked go over to another</source>
   <translation>Vögel des ausgewählten Satzes kommen zu einem anderen</translation>
  </message>
  <message>
   <source>Birds of the batch that is picked part from it</source>
   <translation>Vögel des ausgewählten Satzes trennen sich von ihm</translation>
  </message>
  <message>
   <source>Birds weighed</source>
   <translation>Vögel gewogen</translation>
  </message>
  <message>
   <source>Books</source>
   <translation>Bücher</translation>
  </message>
  <message>
   <source>Bring today into view</source>
   <translation>Den heutigen Tag zeigen</translation>
  </message>
  <message>
   <source>Brooder: heated floor for chicks</source>
   <translation>Aufzuchtbox: geheizte Fläche für Küken</translation>
  </message>
  <message>
   <source>By typing it: 12 Apr, in 3 weeks, week 15</source>
   <translation>Durch Tippen: 12. Apr, in 3 Wochen, Woche 15</translation>
  </message>
  <message>
   <source>By which half of them were out; empty if you do not know</source>
   <translation>In der die Hälfte draußen war; leer, wenn du es nicht weißt</translation>
  </message>
  <message>
   <source>C&amp;ause</source>
   <translation>&amp;Ursache</translation>
  </message>
  <message>
   <source>C&amp;ocks</source>
   <translation>Hä&amp;hne</translation>
  </message>
  <message>
   <source>Cabinet: setter and hatcher in one</source>
   <translation>Kombibrüter: beides in einem</translation>
  </message>
  <message>
   <source>Calendar file</source>
   <translation>Kalenderdatei</translation>
  </message>
  <message>
   <source>Calendars (*.ics)</source>
   <translation>Kalender (*.ics)</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>Caution:</source>
   <translation>Vorsicht:</translation>
  </message>
  <message>
   <source>Chan&amp;ge what is picked…</source>
   <translation>&amp;Ausgewähltes ändern …</translation>
  </message>
  <message>
   <source>Change the batch that is picked</source>
   <translation>Den ausgewählten Satz ändern</translation>
  </message>
  <message>
   <source>Change {batch}</source>
   <translation>{batch} ändern</translation>
  </message>
  <message>
   <source>Change {chore}</source>
   <translation>{chore} ändern</translation>
  </message>
  <message>
   <source>Change {person}</source>
   <translation>{person} ändern</translation>
  </message>
  <message>
   <source>Change {place}</source>
   <translation>{place} ändern</translation>
  </message>
  <message>
   <source>Change…</source>
   <translation>Ändern …</translation>
  </message>
  <message>
   <source>Chart</source>
   <translation>Diagramm</translation>
  </message>
  <message>
   <source>Charts</source>
   <translation>Diagramme</translation>
  </message>
  <message>
   <source>Choose a file…</source>
   <translation>Datei auswählen …</translation>
  </message>
  <message>
   <source>Chore sheet on paper…</source>
   <translation>Aufgabenblatt auf Papier …</translation>
  </message>
  <message>
   <source>Chores follow from batches: with the first one they stand here day by day.</source>
   <translation>Aufgaben folgen aus Sätzen: Mit dem ersten stehen sie hier Tag für Tag.</translation>
  </message>
  <message>
   <source>Clashes</source>
   <translation>Engpässe</translation>
  </message>
  <message>
   <source>Clean-out</source>
   <translation>Ausmisten</translation>
  </message>
  <message>
   <source>Clear</source>
   <translation>Leeren</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>Columns &amp;parted by</source>
   <translation>Spalten &amp;getrennt durch</translation>
  </message>
  <message>
   <source>Compare</source>
   <translation>Vergleichen</translation>
  </message>
  <message>
   <source>Comparing …</source>
   <translation>Vergleiche …</translation>
  </message>
  <message>
   <source>Correct a count</source>
   <translation>Zählung berichtigen</translation>
  </message>
  <message>
   <source>Coun&amp;ts…</source>
   <translation>Zä&amp;hlungen …</translation>
  </message>
  <message>
   <source>Counted</source>
   <translation>Gezählt</translation>
  </message>
  <message>
   <source>Counts</source>
   <translation>Zählungen</translation>
  </message>
  <message>
   <source>Counts &amp;of</source>
   <translation>Zählungen &amp;von</translation>
  </message>
  <message>
   <source>Counts of</source>
   <translation>Zählungen von</translation>
  </message>
  <message>
   <source>Counts without a day are of {day}.</source>
   <translation>Einträge ohne Tag sind vom {day}.</translation>
  </message>
  <message>
   <source>Counts, newest first</source>
   <translation>Zählungen, die neueste zuerst</translation>
  </message>
  <message>
   <source>Counts…</source>
   <translation>Zählungen …</translation>
  </message>
  <message>
   <source>D&amp;ressed weight</source>
   <translation>Sch&amp;lachtgewicht</translation>
  </message>
  <message>
   <source>Dar&amp;k</source>
   <translation>&amp;Dunkel</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>Day 0 of the batch; its whole route moves along</source>
   <translation>Tag 0 des Satzes; sein ganzer Weg zieht mit</translation>
  </message>
  <message>
   <source>Day {number} of {batch}</source>
   <translation>{batch}, Tag {number}</translation>
  </message>
  <message>
   <source>Days before setting</source>
   <translation>Tage vor dem Einlegen</translation>
  </message>
  <message>
   <source>Days between the last out and the next in</source>
   <translation>Tage zwischen den Letzten hinaus und den Nächsten hinein</translation>
  </message>
  <message>
   <source>December</source>
   <translation>Dezember</translation>
  </message>
  <message>
   <source>Decimals &amp;after</source>
   <translation>&amp;Dezimalzeichen</translation>
  </message>
  <message>
   <source>Details</source>
   <translation>Einzelheiten</translation>
  </message>
  <message>
   <source>Details: what is picked, or all clashes ahead (F9)</source>
   <translation>Einzelheiten: was ausgewählt ist, oder alle Engpässe voraus (F9)</translation>
  </message>
  <message>
   <source>Do it</source>
   <translation>Tun</translation>
  </message>
  <message>
   <source>Do it: {sentence}</source>
   <translation>Tun: {sentence}</translation>
  </message>
  <message>
   <source>Do the step that was taken back again</source>
   <translation>Den zurückgenommenen Schritt wieder tun</translation>
  </message>
  <message>
   <source>Documents (*.json)</source>
   <translation>Dokumente (*.json)</translation>
  </message>
  <message>
   <source>Done again: {label}.</source>
   <translation>Wieder getan: {label}.</translation>
  </message>
  <message>
   <source>Drin&amp;ker space</source>
   <translation>&amp;Tränke</translation>
  </message>
  <message>
   <source>Drop it</source>
   <translation>Verwerfen</translation>
  </message>
  <message>
   <source>E&amp;xport everything…</source>
   <translation>Alles e&amp;xportieren …</translation>
  </message>
  <message>
   <source>Each day shows the most eggs that make no new clash, with room for all but the largest hatches (how sure: Change › Farm). Below stands what stops more. Drag the point, or use the arrow keys, to another day or fewer eggs.</source>
   <translation>Jeder Tag zeigt die meisten Eier, die keinen neuen Engpass machen, mit Platz für alle außer den größten Schlüpfen (wie sicher: Ändern › Hof). Darunter steht, was mehr verhindert. Den Punkt ziehen, oder mit den Pfeiltasten, zu einem anderen Tag oder weniger Eiern.</translation>
  </message>
  <message>
   <source>Eggs fro&amp;m</source>
   <translation>Eier v&amp;on</translation>
  </message>
  <message>
   <source>Eggs from: {names}</source>
   <translation>Eier von: {names}</translation>
  </message>
  <message>
   <source>Eggs laid</source>
   <translation>Eier gelegt</translation>
  </message>
  <message>
   <source>Eggs of</source>
   <translation>Eier von</translation>
  </message>
  <message>
   <source>Eggs or birds</source>
   <translation>Eier oder Vögel</translation>
  </message>
  <message>
   <source>Eggs set, of all these batches</source>
   <translation>Eingelegte Eier aller dieser Sätze</translation>
  </message>
  <message>
   <source>Eggs set, or birds that came</source>
   <translation>Eingelegte Eier, oder Vögel, die kamen</translation>
  </message>
  <message>
   <source>Eggs were</source>
   <translation>Eier wurden</translation>
  </message>
  <message>
   <source>Empty if you do not want it checked</source>
   <translation>Leer, wenn es nicht geprüft werden soll</translation>
  </message>
  <message>
   <source>English, or another language there is</source>
   <translation>Englisch oder eine andere Sprache, die es gibt</translation>
  </message>
  <message>
   <source>Every batch has its place, its room and its clean-out. Pick a batch to see its days.</source>
   <translation>Jeder Satz hat seinen Platz, seinen Raum und sein Ausmisten. Einen Satz auswählen, um seine Tage zu sehen.</translation>
  </message>
  <message>
   <source>Every change is a step. Go to one to have the farm as it was then. The steps after it stay in the list to be done again, until you change something.</source>
   <translation>Jede Änderung ist ein Schritt. Zu einem gehen, um den Hof zu haben, wie er da war. Die Schritte danach bleiben in der Liste und lassen sich wiederholen, bis du etwas änderst.</translation>
  </message>
  <message>
   <source>Every figure shows its source. A farm may replace any of them by its own.</source>
   <translation>Jeder Richtwert zeigt seine Quelle. Ein Hof darf jeden durch einen eigenen ersetzen.</translation>
  </message>
  <message>
   <source>Every how many</source>
   <translation>Alle wie viele</translation>
  </message>
  <message>
   <source>Every step, when it was made, and going back to any</source>
   <translation>Jeder Schritt, wann er gemacht wurde, und zurück zu jedem</translation>
  </message>
  <message>
   <source>Everything</source>
   <translation>Alles</translation>
  </message>
  <message>
   <source>Everything after it is taken back; it can be done again from here.</source>
   <translation>Alles danach wird zurückgenommen; von hier lässt es sich wiederholen.</translation>
  </message>
  <message>
   <source>Everything else fits. Shows what is accepted</source>
   <translation>Alles andere passt. Zeigt, was hingenommen ist</translation>
  </message>
  <message>
   <source>Everything fits</source>
   <translation>Alles passt</translation>
  </message>
  <message>
   <source>Export everything to</source>
   <translation>Alles exportieren nach</translation>
  </message>
  <message>
   <source>F&amp;arm: name, units, nights…</source>
   <translation>&amp;Hof: Name, Einheiten, Nächte …</translation>
  </message>
  <message>
   <source>Fact and plan</source>
   <translation>Geschehen und Plan</translation>
  </message>
  <message>
   <source>Farm: name, units, &amp;nights…</source>
   <translation>H&amp;of: Name, Einheiten, Nächte …</translation>
  </message>
  <message>
   <source>Farms (*.quail);;All files (*)</source>
   <translation>Höfe (*.quail);;Alle Dateien (*)</translation>
  </message>
  <message>
   <source>February</source>
   <translation>Februar</translation>
  </message>
  <message>
   <source>Fee&amp;der space</source>
   <translation>&amp;Fressplatz</translation>
  </message>
  <message>
   <source>Feed</source>
   <translation>Futter</translation>
  </message>
  <message>
   <source>Fewer days, wider</source>
   <translation>Weniger Tage, breiter</translation>
  </message>
  <message>
   <source>Figure</source>
   <translation>Richtwert</translation>
  </message>
  <message>
   <source>Figures</source>
   <translation>Richtwerte</translation>
  </message>
  <message>
   <source>Find a batch, a place or a day</source>
   <translation>Einen Satz, einen Platz oder einen Tag suchen</translation>
  </message>
  <message>
   <source>Find a batch, place or day…</source>
   <translation>Satz, Platz oder Tag suchen …</translation>
  </message>
  <message>
   <source>Find a step</source>
   <translation>Einen Schritt suchen</translation>
  </message>
  <message>
   <source>Find a step, such as a batch's name</source>
   <translation>Einen Schritt suchen, etwa den Namen eines Satzes</translation>
  </message>
  <message>
   <source>First day, {number}</source>
   <translation>Erster Tag, {number}</translation>
  </message>
  <message>
   <source>Fit t&amp;he season</source>
   <translation>Saison ein&amp;passen</translation>
  </message>
  <message>
   <source>Floor</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <source>For places that are being built; none of it on days away</source>
   <translation>Für Plätze im Bau; nichts davon an Tagen der Abwesenheit</translation>
  </message>
  <message>
   <source>Frees up</source>
   <translation>Wird frei</translation>
  </message>
  <message>
   <source>From the first to the last hour that lamps are on; what lies between counts as lit. Empty if none is told</source>
   <translation>Von der ersten bis zur letzten Stunde, in der Lampen an sind; was dazwischen liegt, gilt als hell. Leer, wenn nichts gesagt ist</translation>
  </message>
  <message>
   <source>From the next start on, Quailsched speaks</source>
   <translation>Vom nächsten Start an spricht Quailsched</translation>
  </message>
  <message>
   <source>From the next start on: {language}.</source>
   <translation>Vom nächsten Start an: {language}.</translation>
  </message>
  <message>
   <source>From when on</source>
   <translation>Ab wann</translation>
  </message>
  <message>
   <source>Go to a day…</source>
   <translation>Zu einem Tag …</translation>
  </message>
  <message>
   <source>Go to the clash before</source>
   <translation>Zum Engpass davor</translation>
  </message>
  <message>
   <source>Go to the next clash</source>
   <translation>Zum nächsten Engpass</translation>
  </message>
  <message>
   <source>Go to the next clash (F3)</source>
   <translation>Zum nächsten Engpass (F3)</translation>
  </message>
  <message>
   <source>Go to this step</source>
   <translation>Zu diesem Schritt</translation>
  </message>
  <message>
   <source>Go to today</source>
   <translation>Zu &amp;heute</translation>
  </message>
  <message>
   <source>Grass pen: moved over grass</source>
   <translation>Wiesenvoliere: wandert über Gras</translation>
  </message>
  <message>
   <source>Groups</source>
   <translation>Gruppen</translation>
  </message>
  <message>
   <source>H&amp;ow</source>
   <translation>W&amp;ie</translation>
  </message>
  <message>
   <source>Hang lamps by a chain and a second cord, well away from bedding: they start fires.</source>
   <translation>Lampen an einer Kette und einer zweiten Schnur aufhängen, weit weg von der Einstreu: Sie lösen Brände aus.</translation>
  </message>
  <message>
   <source>Hatch by incubator</source>
   <translation>Schlupf nach Brüter</translation>
  </message>
  <message>
   <source>Hatch, lay, feed and work by what was counted</source>
   <translation>Schlupf, Legen, Futter und Arbeit nach dem, was gezählt wurde</translation>
  </message>
  <message>
   <source>Hatch, lay, feed and work by what was counted (Ctrl+4)</source>
   <translation>Schlupf, Legen, Futter und Arbeit nach dem, was gezählt wurde (Strg+4)</translation>
  </message>
  <message>
   <source>Hatcher: lockdown and hatch</source>
   <translation>Schlupfbrüter: Umlegen und Schlupf</translation>
  </message>
  <message>
   <source>Hen-days</source>
   <translation>Hennentage</translation>
  </message>
  <message>
   <source>History</source>
   <translation>Geschichte</translation>
  </message>
  <message>
   <source>Ho&amp;ur</source>
   <translation>&amp;Stunde</translation>
  </message>
  <message>
   <source>Holds {birds} Coturnix by the figures.</source>
   <translation>Fasst nach den Richtwerten {birds} Coturnix.</translation>
  </message>
  <message>
   <source>Hours</source>
   <translation>Stunden</translation>
  </message>
  <message>
   <source>Hours wor&amp;ked</source>
   <translation>Gearbeitete &amp;Stunden</translation>
  </message>
  <message>
   <source>How &amp;sure</source>
   <translation>Wie &amp;sicher</translation>
  </message>
  <message>
   <source>How many chores are due, told by the desktop</source>
   <translation>Wie viele Aufgaben anstehen, gemeldet vom Schreibtisch</translation>
  </message>
  <message>
   <source>How many hours? Such as: 1.5 h.</source>
   <translation>Wie viele Stunden? Zum Beispiel: 1,5 h.</translation>
  </message>
  <message>
   <source>How many of {number} go to the other place?</source>
   <translation>Wie viele von {number} kommen an den anderen Platz?</translation>
  </message>
  <message>
   <source>How many? Such as: 12 {sort}.</source>
   <translation>Wie viele? Zum Beispiel: 12 {sort}.</translation>
  </message>
  <message>
   <source>How much? Such as: 2.5 kg.</source>
   <translation>Wie viel? Zum Beispiel: 2,5 kg.</translation>
  </message>
  <message>
   <source>How to &amp;begin</source>
   <translation>&amp;Anfangen</translation>
  </message>
  <message>
   <source>How to begin</source>
   <translation>Anfangen</translation>
  </message>
  <message>
   <source>I know how cold a cold night gets</source>
   <translation>Ich weiß, wie kalt eine kalte Nacht wird</translation>
  </message>
  <message>
   <source>I know my latitude</source>
   <translation>Ich kenne meine geografische Breite</translation>
  </message>
  <message>
   <source>Import a document</source>
   <translation>Ein Dokument importieren</translation>
  </message>
  <message>
   <source>In one line, as it will stand on the page</source>
   <translation>In einer Zeile, wie es auf der Seite stehen soll</translation>
  </message>
  <message>
   <source>In so many the next set has room, and enough birds</source>
   <translation>In so vielen hat das nächste Einlegen Platz und genug Vögel</translation>
  </message>
  <message>
   <source>In {place}, {days}</source>
   <translation>In {place}, {days}</translation>
  </message>
  <message>
   <source>Incubator</source>
   <translation>Brüter</translation>
  </message>
  <message>
   <source>Insert adds, Return changes, Delete removes; Ctrl+Up or Ctrl+Down sorts by the column of the cell.</source>
   <translation>Einfg fügt hinzu, Eingabe ändert, Entf entfernt; Strg+Auf oder Strg+Ab sortiert nach der Spalte der Zelle.</translation>
  </message>
  <message>
   <source>It counts no longer, but stays in the list. Key: Delete</source>
   <translation>Sie gilt nicht mehr, bleibt aber in der Liste. Taste: Entf</translation>
  </message>
  <message>
   <source>It goes into the plan: what happens, happens to no trial.</source>
   <translation>Es kommt in den Plan: Was geschieht, geschieht in keinem Versuch.</translation>
  </message>
  <message>
   <source>It goes with all of its days. Undo brings it back.</source>
   <translation>Sie geht mit allen ihren Tagen. Zurücknehmen bringt sie wieder.</translation>
  </message>
  <message>
   <source>It has no birds today.</source>
   <translation>Er hat heute keine Vögel.</translation>
  </message>
  <message>
   <source>It is copied into a folder beside the farm</source>
   <translation>Es wird in einen Ordner neben dem Hof kopiert</translation>
  </message>
  <message>
   <source>It is done: untick it first</source>
   <translation>Sie ist erledigt: erst den Haken wegnehmen</translation>
  </message>
  <message>
   <source>It is due on {day}</source>
   <translation>Sie steht an am {day}</translation>
  </message>
  <message>
   <source>It is in {count}</source>
   <translation>Er ist in {count}</translation>
  </message>
  <message>
   <source>It makes no clash.</source>
   <translation>Er macht keinen Engpass.</translation>
  </message>
  <message>
   <source>It makes {count}</source>
   <translation>Er macht {count}</translation>
  </message>
  <message>
   <source>It stays on the page with this reason</source>
   <translation>Mit diesem Grund bleibt sie auf der Seite stehen</translation>
  </message>
  <message>
   <source>Its birds go over to another batch</source>
   <translation>Seine Vögel kommen zu einem anderen Satz</translation>
  </message>
  <message>
   <source>Its route is empty: add a stay, or take the usual route.</source>
   <translation>Sein Weg ist leer: Aufenthalt hinzufügen oder den üblichen Weg nehmen.</translation>
  </message>
  <message>
   <source>January</source>
   <translation>Januar</translation>
  </message>
  <message>
   <source>Join…</source>
   <translation>Vereinen …</translation>
  </message>
  <message>
   <source>July</source>
   <translation>Juli</translation>
  </message>
  <message>
   <source>June</source>
   <translation>Juni</translation>
  </message>
  <message>
   <source>Keep</source>
   <translation>Behalten</translation>
  </message>
  <message>
   <source>Keep it</source>
   <translation>Übernehmen</translation>
  </message>
  <message>
   <source>Keep the farm in</source>
   <translation>Den Hof aufbewahren in</translation>
  </message>
  <message>
   <source>Key: Ctrl+Return</source>
   <translation>Taste: Strg+Eingabe</translation>
  </message>
  <message>
   <source>Key: Escape</source>
   <translation>Taste: Esc</translation>
  </message>
  <message>
   <source>Key: Return</source>
   <translation>Taste: Eingabe</translation>
  </message>
  <message>
   <source>Key: {key}</source>
   <translation>Taste: {key}</translation>
  </message>
  <message>
   <source>Keys and mouse</source>
   <translation>Tasten und Maus</translation>
  </message>
  <message>
   <source>L&amp;anguage…</source>
   <translation>Sp&amp;rache …</translation>
  </message>
  <message>
   <source>Lamps or plates. {empty}. {lamps}</source>
   <translation>Lampen oder Platten. {empty}. {lamps}</translation>
  </message>
  <message>
   <source>Lan&amp;es of places or batches</source>
   <translation>Bahnen der Plätze &amp;oder der Sätze</translation>
  </message>
  <message>
   <source>Lanes of places over time</source>
   <translation>Bahnen der Plätze über die Zeit</translation>
  </message>
  <message>
   <source>Lanes of places over time (Ctrl+1)</source>
   <translation>Bahnen der Plätze über die Zeit (Strg+1)</translation>
  </message>
  <message>
   <source>Language</source>
   <translation>Sprache</translation>
  </message>
  <message>
   <source>Last day, {number}</source>
   <translation>Letzter Tag, {number}</translation>
  </message>
  <message>
   <source>Lay against the curve</source>
   <translation>Legen gegen die Kurve</translation>
  </message>
  <message>
   <source>Lay expected</source>
   <translation>Legeleistung erwartet</translation>
  </message>
  <message>
   <source>Lay found</source>
   <translation>Legeleistung gefunden</translation>
  </message>
  <message>
   <source>Leave a day earlier</source>
   <translation>Einen Tag früher verlassen</translation>
  </message>
  <message>
   <source>Leave a day later</source>
   <translation>Einen Tag später verlassen</translation>
  </message>
  <message>
   <source>Length, fills the floor</source>
   <translation>Länge, füllt die Fläche aus</translation>
  </message>
  <message>
   <source>Light or dark as the desktop is set</source>
   <translation>Hell oder dunkel, wie der Schreibtisch eingestellt ist</translation>
  </message>
  <message>
   <source>Live &amp;weight</source>
   <translation>Lebend&amp;gewicht</translation>
  </message>
  <message>
   <source>Live with a clash to watch, with a word of why; it comes back when it grows</source>
   <translation>Mit einem Engpass leben, der zu beachten ist, mit einem Wort warum; er kommt wieder, wenn er wächst</translation>
  </message>
  <message>
   <source>Live with it, with a word of why. Key: Ctrl+Shift+A</source>
   <translation>Damit leben, mit einem Wort warum. Taste: Strg+Umschalt+A</translation>
  </message>
  <message>
   <source>Look at Pebble Bank, an invented farm</source>
   <translation>Pebble Bank ansehen, einen erfundenen Hof</translation>
  </message>
  <message>
   <source>Look at the plan again</source>
   <translation>Wieder den Plan ansehen</translation>
  </message>
  <message>
   <source>Look at the trial “{trial}”</source>
   <translation>Den Versuch „{trial}“ ansehen</translation>
  </message>
  <message>
   <source>Ma&amp;ke a part of it a batch…</source>
   <translation>E&amp;inen Teil abteilen …</translation>
  </message>
  <message>
   <source>Make a farm file from an exported document</source>
   <translation>Aus einem exportierten Dokument eine Hofdatei machen</translation>
  </message>
  <message>
   <source>March</source>
   <translation>März</translation>
  </message>
  <message>
   <source>Mo&amp;ve, split, another place…</source>
   <translation>&amp;Verschieben, aufteilen, anderer Platz …</translation>
  </message>
  <message>
   <source>More about {chore}</source>
   <translation>Mehr zu: {chore}</translation>
  </message>
  <message>
   <source>More days, narrower</source>
   <translation>Mehr Tage, schmaler</translation>
  </message>
  <message>
   <source>Morning notice</source>
   <translation>Meldung am Morgen</translation>
  </message>
  <message>
   <source>Most eggs by day</source>
   <translation>Meiste Eier nach Tagen</translation>
  </message>
  <message>
   <source>Move out</source>
   <translation>Umzug</translation>
  </message>
  <message>
   <source>N&amp;ote</source>
   <translation>N&amp;otiz</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>Ne&amp;xt set</source>
   <translation>&amp;Nächstes Einlegen</translation>
  </message>
  <message>
   <source>New batches a&amp;re</source>
   <translation>&amp;Neue Sätze sind</translation>
  </message>
  <message>
   <source>New farm</source>
   <translation>Neuer Hof</translation>
  </message>
  <message>
   <source>Next set</source>
   <translation>Einlegen</translation>
  </message>
  <message>
   <source>Next seven days</source>
   <translation>Die nächsten sieben Tage</translation>
  </message>
  <message>
   <source>Next, on {day}: {chore}.</source>
   <translation>Als Nächstes, am {day}: {chore}.</translation>
  </message>
  <message>
   <source>Ni&amp;ghts</source>
   <translation>Nä&amp;chte</translation>
  </message>
  <message>
   <source>No batch is planned yet. Add one (Change › Add a batch), and print this page again.</source>
   <translation>Noch ist kein Satz geplant. Einen hinzufügen (Ändern › Satz hinzufügen) und diese Seite noch einmal drucken.</translation>
  </message>
  <message>
   <source>No batch tells yet whose hens laid its eggs.

Once a batch of eggs names its breeding group, and its candling and hatch are recorded, fertility and hatch of each group stand here.</source>
   <translation>Noch sagt kein Satz, wessen Hennen seine Eier gelegt haben.

Sobald ein Satz Eier seine Zuchtgruppe nennt und Schieren und Schlupf notiert sind, stehen hier Befruchtung und Schlupf jeder Gruppe.</translation>
  </message>
  <message>
   <source>No batches yet, and no places for them. Begin with what holds your eggs, then the brooder and the pen.</source>
   <translation>Noch keine Sätze, und keine Plätze für sie. Mit dem beginnen, worin die Eier liegen, dann Aufzuchtbox und Voliere.</translation>
  </message>
  <message>
   <source>No batches yet. Say how many eggs go in and when: the days follow by themselves.</source>
   <translation>Noch keine Sätze. Angeben, wie viele Eier wann hineinkommen: Die Tage ergeben sich von selbst.</translation>
  </message>
  <message>
   <source>No birds were weighed yet.

Record weights of a batch, ten birds together will do, to see its growth.</source>
   <translation>Noch wurden keine Vögel gewogen.

Notiere Gewichte eines Satzes, zehn Vögel zusammen genügen, um sein Wachstum zu sehen.</translation>
  </message>
  <message>
   <source>No chore falls on these days.</source>
   <translation>Keine Aufgabe fällt auf diese Tage.</translation>
  </message>
  <message>
   <source>No clash ahead</source>
   <translation>Kein Engpass voraus</translation>
  </message>
  <message>
   <source>No clash ahead but accepted ones</source>
   <translation>Kein Engpass voraus außer hingenommenen</translation>
  </message>
  <message>
   <source>No day is read from this</source>
   <translation>Das ist als Tag nicht zu lesen</translation>
  </message>
  <message>
   <source>No eggs are recorded of any batch yet.

Record the eggs of a pen or a batch, day by day, to see its lay.</source>
   <translation>Noch sind von keinem Satz Eier notiert.

Notiere Tag für Tag die Eier einer Voliere oder eines Satzes, um die Legeleistung zu sehen.</translation>
  </message>
  <message>
   <source>No eggs were set yet.

Add a setter, hatcher or cabinet and a batch of eggs (Ctrl+B): its hatch then stands here.</source>
   <translation>Noch wurden keine Eier eingelegt.

Lege einen Vorbrüter, Schlupfbrüter oder Kombibrüter und einen Satz Eier an (Strg+B): Dann steht hier sein Schlupf.</translation>
  </message>
  <message>
   <source>No hatch is recorded yet.

Record how many chicks hatched of a batch to see the hatch of each incubator.</source>
   <translation>Noch ist kein Schlupf notiert.

Notiere, wie viele Küken aus einem Satz geschlüpft sind, um den Schlupf jedes Brüters zu sehen.</translation>
  </message>
  <message>
   <source>No other batch of its kind lives on this day.</source>
   <translation>Kein anderer Satz dieser Art lebt an diesem Tag.</translation>
  </message>
  <message>
   <source>No places yet.</source>
   <translation>Noch keine Plätze.</translation>
  </message>
  <message>
   <source>No places yet. Begin with what holds your eggs, then the brooder and the pen.</source>
   <translation>Noch keine Plätze. Mit dem beginnen, worin die Eier liegen, dann Aufzuchtbox und Voliere.</translation>
  </message>
  <message>
   <source>No row can be taken in yet.</source>
   <translation>Noch kann keine Zeile übernommen werden.</translation>
  </message>
  <message>
   <source>No&amp;te</source>
   <translation>Noti&amp;z</translation>
  </message>
  <message>
   <source>Nobody at home</source>
   <translation>Niemand da</translation>
  </message>
  <message>
   <source>Nobody yet. Tell who does the chores, and when they are away: work that needs hands is checked.</source>
   <translation>Noch niemand. Angeben, wer die Aufgaben erledigt und wann jemand fort ist: Arbeit, die Hände braucht, wird geprüft.</translation>
  </message>
  <message>
   <source>None on this day</source>
   <translation>An diesem Tag keine</translation>
  </message>
  <message>
   <source>Nor on the seven days after it. Counts can be recorded all the same.</source>
   <translation>Auch nicht an den sieben Tagen danach. Eintragen geht trotzdem.</translation>
  </message>
  <message>
   <source>Nothing is counted yet of {batches}.</source>
   <translation>Noch nichts gezählt: {batches}.</translation>
  </message>
  <message>
   <source>Nothing is counted yet.</source>
   <translation>Noch ist nichts gezählt.</translation>
  </message>
  <message>
   <source>Nothing is counted yet.

Record what was clear at candling, how many hatched and died, eggs, feed and weights: fertility, hatch, lay and feed conversion of each batch then stand here.</source>
   <translation>Noch ist nichts gezählt.

Notiere, was beim Schieren klar war, wie viele geschlüpft und gestorben sind, Eier, Futter und Gewichte: Dann stehen hier Befruchtung, Schlupf, Legeleistung und Futterverwertung jedes Satzes.</translation>
  </message>
  <message>
   <source>Nothing is due on these days.</source>
   <translation>An diesen Tagen ist nichts zu tun.</translation>
  </message>
  <message>
   <source>Nothing is due on this day.</source>
   <translation>An diesem Tag steht nichts an.</translation>
  </message>
  <message>
   <source>Nothing is due, as no batch is planned.</source>
   <translation>Nichts steht an, denn kein Satz ist geplant.</translation>
  </message>
  <message>
   <source>Nothing is due, as no batch is planned. Add one (Change › Add a batch), and print this sheet again.</source>
   <translation>Nichts ist zu tun, denn kein Satz ist geplant. Einen hinzufügen (Ändern › Satz hinzufügen) und dieses Blatt noch einmal drucken.</translation>
  </message>
  <message>
   <source>Nothing is otherwise than in the plan yet.</source>
   <translation>Noch ist nichts anders als im Plan.</translation>
  </message>
  <message>
   <source>Nothing of that name, and no day</source>
   <translation>Kein solcher Name und kein Tag</translation>
  </message>
  <message>
   <source>Nothing to redo</source>
   <translation>Nichts zu wiederholen</translation>
  </message>
  <message>
   <source>Nothing to undo</source>
   <translation>Nichts zurückzunehmen</translation>
  </message>
  <message>
   <source>November</source>
   <translation>November</translation>
  </message>
  <message>
   <source>Now a batch</source>
   <translation>Jetzt ein Satz</translation>
  </message>
  <message>
   <source>Now and next</source>
   <translation>Jetzt und danach</translation>
  </message>
  <message>
   <source>Number</source>
   <translation>Zahl</translation>
  </message>
  <message>
   <source>October</source>
   <translation>Oktober</translation>
  </message>
  <message>
   <source>Of</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>Of which batch? On {day} none is known to fit “{sort}”.</source>
   <translation>Von welchem Satz? Am {day} passt keiner zu „{sort}“.</translation>
  </message>
  <message>
   <source>Of which batch? {names}</source>
   <translation>Von welchem Satz? {names}</translation>
  </message>
  <message>
   <source>Of which place or batch? No hens lay yet by the plan.</source>
   <translation>Von welchem Platz oder Satz? Nach dem Plan legen noch keine Hennen.</translation>
  </message>
  <message>
   <source>Of which place? {names}</source>
   <translation>Von welchem Platz? {names}</translation>
  </message>
  <message>
   <source>Oldest egg s&amp;tored</source>
   <translation>Äl&amp;testes Ei gelagert</translation>
  </message>
  <message>
   <source>On no day can eggs be set without a clash. Each day tells what is lacking.</source>
   <translation>An keinem Tag können Eier ohne Engpass eingelegt werden. Bei jedem Tag steht, woran es fehlt.</translation>
  </message>
  <message>
   <source>On no day can eggs be set without a new clash. Solve those that there are first.</source>
   <translation>An keinem Tag können Eier ohne neuen Engpass eingelegt werden. Erst die vorhandenen lösen.</translation>
  </message>
  <message>
   <source>Once a day, while Quailsched is open; the window may be minimised. An icon in the tray brings it up.</source>
   <translation>Einmal am Tag, solange Quailsched offen ist; das Fenster darf verkleinert sein. Ein Symbol in der Taskleiste holt es hervor.</translation>
  </message>
  <message>
   <source>One lane a place or a batch</source>
   <translation>Eine Bahn je Platz oder je Satz</translation>
  </message>
  <message>
   <source>One lane for each batch: its stays and numbers (Ctrl+L)</source>
   <translation>Eine Bahn je Satz: seine Aufenthalte und Zahlen (Strg+L)</translation>
  </message>
  <message>
   <source>One lane for each place: what is taken of it (Ctrl+L)</source>
   <translation>Eine Bahn je Platz: was davon belegt ist (Strg+L)</translation>
  </message>
  <message>
   <source>One more than that</source>
   <translation>Eins mehr als das</translation>
  </message>
  <message>
   <source>One of your own, once or again and again</source>
   <translation>Eine eigene, einmal oder immer wieder</translation>
  </message>
  <message>
   <source>One of your own, once or again and again (Ctrl+Shift+N)</source>
   <translation>Eine eigene, einmal oder immer wieder (Strg+Umschalt+N)</translation>
  </message>
  <message>
   <source>Open a farm</source>
   <translation>Einen Hof öffnen</translation>
  </message>
  <message>
   <source>Open a farm file</source>
   <translation>Eine Hofdatei öffnen</translation>
  </message>
  <message>
   <source>Order of &amp;days</source>
   <translation>&amp;Reihenfolge der Tage</translation>
  </message>
  <message>
   <source>Out of use</source>
   <translation>Außer Betrieb</translation>
  </message>
  <message>
   <source>Out on</source>
   <translation>Hinaus am</translation>
  </message>
  <message>
   <source>Overdue</source>
   <translation>Überfällig</translation>
  </message>
  <message>
   <source>Overview of the season</source>
   <translation>Überblick über die Saison</translation>
  </message>
  <message>
   <source>P&amp;aper</source>
   <translation>&amp;Papier</translation>
  </message>
  <message>
   <source>P&amp;hoto</source>
   <translation>&amp;Foto</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Part of {batch} as a batch</source>
   <translation>Teil von {batch} als Satz</translation>
  </message>
  <message>
   <source>Part off…</source>
   <translation>Abteilen …</translation>
  </message>
  <message>
   <source>Pen: fixed, for feathered birds</source>
   <translation>Voliere: fest, für befiederte Vögel</translation>
  </message>
  <message>
   <source>People</source>
   <translation>Leute</translation>
  </message>
  <message>
   <source>Pick a batch of the plan first.</source>
   <translation>Erst einen Satz des Plans auswählen.</translation>
  </message>
  <message>
   <source>Pick a clash first: F3 goes to the next one.</source>
   <translation>Erst einen Engpass auswählen: F3 geht zum nächsten.</translation>
  </message>
  <message>
   <source>Pick one to see why.</source>
   <translation>Einen auswählen, um zu sehen, warum.</translation>
  </message>
  <message>
   <source>Pictures (*.jpg *.jpeg *.png *.heic *.webp *.gif);;All files (*)</source>
   <translation>Bilder (*.jpg *.jpeg *.png *.heic *.webp *.gif);;Alle Dateien (*)</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Platz</translation>
  </message>
  <message>
   <source>Places</source>
   <translation>Plätze</translation>
  </message>
  <message>
   <source>Places, people, batches and figures (Ctrl+5)</source>
   <translation>Plätze, Leute, Sätze und Richtwerte (Strg+5)</translation>
  </message>
  <message>
   <source>Places, people, batches and figures as tables</source>
   <translation>Plätze, Leute, Sätze und Richtwerte als Tabellen</translation>
  </message>
  <message>
   <source>Plan and fact</source>
   <translation>Plan und Geschehen</translation>
  </message>
  <message>
   <source>Print</source>
   <translation>Drucken</translation>
  </message>
  <message>
   <source>Published</source>
   <translation>Veröffentlicht</translation>
  </message>
  <message>
   <source>Put it off, leave it out, give it to somebody</source>
   <translation>Verschieben, auslassen, jemandem geben</translation>
  </message>
  <message>
   <source>Put off from {day}. {how}</source>
   <translation>Verschoben vom {day}. {how}</translation>
  </message>
  <message>
   <source>Put off: {chore}</source>
   <translation>Verschieben: {chore}</translation>
  </message>
  <message>
   <source>Quit</source>
   <translation>Beenden</translation>
  </message>
  <message>
   <source>Range</source>
   <translation>Spanne</translation>
  </message>
  <message>
   <source>Re&amp;move what is picked…</source>
   <translation>Ausgewähltes ent&amp;fernen …</translation>
  </message>
  <message>
   <source>Reading the rows…</source>
   <translation>Die Zeilen werden gelesen…</translation>
  </message>
  <message>
   <source>Ready on</source>
   <translation>Fertig am</translation>
  </message>
  <message>
   <source>Reason, {number}</source>
   <translation>Grund, {number}</translation>
  </message>
  <message>
   <source>Rec&amp;ord a count…</source>
   <translation>E&amp;twas eintragen …</translation>
  </message>
  <message>
   <source>Record</source>
   <translation>Eintragen</translation>
  </message>
  <message>
   <source>Record a count</source>
   <translation>Etwas eintragen</translation>
  </message>
  <message>
   <source>Record by a &amp;form…</source>
   <translation>&amp;Mit einem Formular eintragen …</translation>
  </message>
  <message>
   <source>Record for {batch}: 2 died, 70 hatched, fed 2.5 kg …</source>
   <translation>Eintragen für {batch}: 2 tot, 70 geschlüpft, Futter 2,5 kg …</translation>
  </message>
  <message>
   <source>Record it all the same</source>
   <translation>Trotzdem eintragen</translation>
  </message>
  <message>
   <source>Record: 2 died {batch}</source>
   <translation>Eintragen: 2 tot {batch}</translation>
  </message>
  <message>
   <source>Records &amp;from a table…</source>
   <translation>Aufzeichnungen a&amp;us einer Tabelle…</translation>
  </message>
  <message>
   <source>Records as &amp;tables…</source>
   <translation>Aufzeichnungen als &amp;Tabellen…</translation>
  </message>
  <message>
   <source>Records as tables</source>
   <translation>Aufzeichnungen als Tabellen</translation>
  </message>
  <message>
   <source>Records from a table</source>
   <translation>Aufzeichnungen aus einer Tabelle</translation>
  </message>
  <message>
   <source>Record…</source>
   <translation>Eintragen …</translation>
  </message>
  <message>
   <source>Redo</source>
   <translation>Wiederholen</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <source>Remove the batch that is picked</source>
   <translation>Den ausgewählten Satz entfernen</translation>
  </message>
  <message>
   <source>Remove the days {number}</source>
   <translation>Die Tage {number} entfernen</translation>
  </message>
  <message>
   <source>Remove…</source>
   <translation>Entfernen …</translation>
  </message>
  <message>
   <source>Rename the trial</source>
   <translation>Versuch umbenennen</translation>
  </message>
  <message>
   <source>Repeat</source>
   <translation>Wiederholen</translation>
  </message>
  <message>
   <source>Return once more records it all the same.</source>
   <translation>Noch einmal Eingabe trägt es trotzdem ein.</translation>
  </message>
  <message>
   <source>Return records: {what}</source>
   <translation>Eingabe trägt ein: {what}</translation>
  </message>
  <message>
   <source>Return saves it, Ctrl+Z takes it back. d: 1 died; e 31: 31 eggs; also “yesterday”, “kg”.</source>
   <translation>Eingabe speichert, Strg+Z nimmt zurück. t: 1 tot; e 31: 31 Eier; auch „gestern“, „kg“.</translation>
  </message>
  <message>
   <source>Return shows a figure and lets this farm have its own; Ctrl+Up or Ctrl+Down sorts by the column.</source>
   <translation>Eingabe zeigt einen Richtwert und lässt diesem Hof seinen eigenen; Strg+Auf oder Strg+Ab sortiert nach der Spalte.</translation>
  </message>
  <message>
   <source>Room</source>
   <translation>Raum</translation>
  </message>
  <message>
   <source>Route</source>
   <translation>Weg</translation>
  </message>
  <message>
   <source>Row</source>
   <translation>Zeile</translation>
  </message>
  <message>
   <source>Rows of the table</source>
   <translation>Zeilen der Tabelle</translation>
  </message>
  <message>
   <source>Rows without a p&amp;lace are of</source>
   <translation>Zeilen &amp;ohne Ort sind von</translation>
  </message>
  <message>
   <source>Save</source>
   <translation>Speichern</translation>
  </message>
  <message>
   <source>Save a picture</source>
   <translation>Bild speichern</translation>
  </message>
  <message>
   <source>Save as P&amp;DF…</source>
   <translation>Als PD&amp;F speichern …</translation>
  </message>
  <message>
   <source>Save as PDF</source>
   <translation>Als PDF speichern</translation>
  </message>
  <message>
   <source>Say how many eggs go in and when. The route through your places is filled in, and where it goes wrong shows at once.</source>
   <translation>Sagen, wie viele Eier wann hineinkommen. Der Weg durch die Plätze wird ausgefüllt, und wo es nicht geht, zeigt sich sofort.</translation>
  </message>
  <message>
   <source>Se&amp;tup</source>
   <translation>&amp;Einrichtung</translation>
  </message>
  <message>
   <source>Season</source>
   <translation>Saison</translation>
  </message>
  <message>
   <source>Season as a table</source>
   <translation>Saison als Tabelle</translation>
  </message>
  <message>
   <source>Season as a table, o&amp;r drawn</source>
   <translation>Saison als &amp;Tabelle oder gezeichnet</translation>
  </message>
  <message>
   <source>See it in the season</source>
   <translation>In der Saison ansehen</translation>
  </message>
  <message>
   <source>September</source>
   <translation>September</translation>
  </message>
  <message>
   <source>Set against people's hours of building until somebody is due here</source>
   <translation>Wird gegen die Baustunden der Leute gerechnet, bis hier jemand einziehen soll</translation>
  </message>
  <message>
   <source>Set eggs</source>
   <translation>Eier einlegen</translation>
  </message>
  <message>
   <source>Set eggs or bring birds in</source>
   <translation>Eier einlegen oder Vögel hereinbringen</translation>
  </message>
  <message>
   <source>Set on</source>
   <translation>Einlegen am</translation>
  </message>
  <message>
   <source>Set or came</source>
   <translation>Anzahl am Anfang</translation>
  </message>
  <message>
   <source>Set {count} of {batch} on {day}</source>
   <translation>{count} von {batch} am {day} einlegen</translation>
  </message>
  <message>
   <source>Set {count} on {when}</source>
   <translation>{count} einlegen am {when}</translation>
  </message>
  <message>
   <source>Set {count} on {when} all the same</source>
   <translation>Trotzdem {count} einlegen am {when}</translation>
  </message>
  <message>
   <source>Setter: turns eggs until lockdown</source>
   <translation>Vorbrüter: wendet Eier bis zum Umlegen</translation>
  </message>
  <message>
   <source>Setup</source>
   <translation>Einrichtung</translation>
  </message>
  <message>
   <source>Show today’s chores</source>
   <translation>Aufgaben von heute zeigen</translation>
  </message>
  <message>
   <source>Show {name}</source>
   <translation>{name} zeigen</translation>
  </message>
  <message>
   <source>Since</source>
   <translation>Seit</translation>
  </message>
  <message>
   <source>So few would clash</source>
   <translation>So wenige gäben einen Engpass</translation>
  </message>
  <message>
   <source>Somebody who does chores</source>
   <translation>Jemand, der Aufgaben erledigt</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <source>South of the equator is negative</source>
   <translation>Südlich des Äquators ist negativ</translation>
  </message>
  <message>
   <source>Split over two places…</source>
   <translation>Auf zwei Plätze teilen …</translation>
  </message>
  <message>
   <source>Split {batch}</source>
   <translation>{batch} teilen</translation>
  </message>
  <message>
   <source>Split {batch}: {count} of {number} go to {where}</source>
   <translation>{batch} teilen: {count} von {number} kommen nach {where}</translation>
  </message>
  <message>
   <source>Stage</source>
   <translation>Abschnitt</translation>
  </message>
  <message>
   <source>Stages</source>
   <translation>Abschnitte</translation>
  </message>
  <message>
   <source>Start a trial</source>
   <translation>Versuch beginnen</translation>
  </message>
  <message>
   <source>Steps, newest first</source>
   <translation>Schritte, neueste zuerst</translation>
  </message>
  <message>
   <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
   <translation>Tabellen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
  </message>
  <message>
   <source>Take acceptance back</source>
   <translation>Nicht mehr hinnehmen</translation>
  </message>
  <message>
   <source>Take in a hatch log or an egg log, row by row</source>
   <translation>Ein Brutbuch oder eine Legeliste übernehmen, Zeile für Zeile</translation>
  </message>
  <message>
   <source>Take it &amp;up again</source>
   <translation>Doch &amp;wieder vornehmen</translation>
  </message>
  <message>
   <source>Take the count back, and all of this with it (Ctrl+Z)</source>
   <translation>Den Eintrag zurücknehmen, und all das mit ihm (Strg+Z)</translation>
  </message>
  <message>
   <source>Take the last step back</source>
   <translation>Den letzten Schritt zurücknehmen</translation>
  </message>
  <message>
   <source>Taken back: {label}.</source>
   <translation>Zurückgenommen: {label}.</translation>
  </message>
  <message>
   <source>Taken in?</source>
   <translation>Übernommen?</translation>
  </message>
  <message>
   <source>The &amp;chores, each with a box to tick</source>
   <translation>Die &amp;Aufgaben, jede mit einem Kästchen zum Abhaken</translation>
  </message>
  <message>
   <source>The &amp;plan</source>
   <translation>Der &amp;Plan</translation>
  </message>
  <message>
   <source>The &amp;season on one page</source>
   <translation>Die &amp;Saison auf einer Seite</translation>
  </message>
  <message>
   <source>The batches whose hens laid them</source>
   <translation>Die Sätze, deren Hennen sie gelegt haben</translation>
  </message>
  <message>
   <source>The beginning: as the farm was made</source>
   <translation>Der Anfang: wie der Hof angelegt wurde</translation>
  </message>
  <message>
   <source>The chores of the coming weeks to tick by hand</source>
   <translation>Die Aufgaben der nächsten Wochen zum Abhaken von Hand</translation>
  </message>
  <message>
   <source>The clashes ahead, or what is picked</source>
   <translation>Die Engpässe voraus, oder was ausgewählt ist</translation>
  </message>
  <message>
   <source>The day after (Alt+Right)</source>
   <translation>Der Tag danach (Alt+Rechts)</translation>
  </message>
  <message>
   <source>The day before (Alt+Left)</source>
   <translation>Der Tag davor (Alt+Links)</translation>
  </message>
  <message>
   <source>The day on which eggs were set or birds came</source>
   <translation>Der Tag, an dem Eier eingelegt wurden oder Vögel kamen</translation>
  </message>
  <message>
   <source>The farm is now as after this step: {label}.</source>
   <translation>Der Hof ist jetzt wie nach diesem Schritt: {label}.</translation>
  </message>
  <message>
   <source>The frame is what is in view: push it, or pull an edge</source>
   <translation>Der Rahmen zeigt, was zu sehen ist: schieben oder am Rand ziehen</translation>
  </message>
  <message>
   <source>The numbers of the chart as a table</source>
   <translation>Die Zahlen des Diagramms als Tabelle</translation>
  </message>
  <message>
   <source>The other batch has these birds now: undo the step in the history instead.</source>
   <translation>Der andere Satz hat diese Vögel jetzt: stattdessen den Schritt im Verlauf zurücknehmen.</translation>
  </message>
  <message>
   <source>The outline is the batch that is thought of. Nothing is set yet: Ctrl+3 goes back to it.</source>
   <translation>Der Umriss ist der gedachte Satz. Noch ist nichts eingelegt: Strg+3 geht dorthin zurück.</translation>
  </message>
  <message>
   <source>The plan and the trial side by side</source>
   <translation>Der Plan und der Versuch nebeneinander</translation>
  </message>
  <message>
   <source>The plan becomes as the trial is, in one step</source>
   <translation>Der Plan wird in einem Schritt, wie der Versuch ist</translation>
  </message>
  <message>
   <source>The plan becomes as the trial is; undo takes it back</source>
   <translation>Der Plan wird, wie der Versuch ist; Zurücknehmen macht es ungeschehen</translation>
  </message>
  <message>
   <source>The printer takes no pages; another printer, or a PDF file, is accepted.</source>
   <translation>Der Drucker nimmt keine Seiten an; ein anderer Drucker oder eine PDF-Datei wird angenommen.</translation>
  </message>
  <message>
   <source>The rest is unsure</source>
   <translation>Der Rest ist unsicher</translation>
  </message>
  <message>
   <source>The same season in rows of words</source>
   <translation>Dieselbe Saison in Zeilen aus Worten</translation>
  </message>
  <message>
   <source>The season is that of the trial “{trial}”, the chores are those of the plan.</source>
   <translation>Die Saison ist die des Versuchs „{trial}“, die Aufgaben sind die des Plans.</translation>
  </message>
  <message>
   <source>The season on one page, or the chores of the coming weeks to tick</source>
   <translation>Die Saison auf einer Seite, oder die Aufgaben der nächsten Wochen zum Abhaken</translation>
  </message>
  <message>
   <source>The season with this batch as an outline; nothing is set yet</source>
   <translation>Die Saison mit diesem Satz als Umriss; noch ist nichts eingelegt</translation>
  </message>
  <message>
   <source>The trial goes, the plan stays as it is</source>
   <translation>Der Versuch geht, der Plan bleibt, wie er ist</translation>
  </message>
  <message>
   <source>The trial goes, the plan stays; undo brings it back</source>
   <translation>Der Versuch geht, der Plan bleibt; Zurücknehmen bringt ihn wieder</translation>
  </message>
  <message>
   <source>The trial stays for later, in the Trials menu</source>
   <translation>Der Versuch bleibt für später, im Menü Versuche</translation>
  </message>
  <message>
   <source>The two side by side</source>
   <translation>Beide nebeneinander</translation>
  </message>
  <message>
   <source>The whole season as a page, a picture or a drawing</source>
   <translation>Die ganze Saison als Seite, Bild oder Zeichnung</translation>
  </message>
  <message>
   <source>The whole season in view</source>
   <translation>Die ganze Saison im Blick</translation>
  </message>
  <message>
   <source>Then</source>
   <translation>Dann</translation>
  </message>
  <message>
   <source>There is no place for eggs yet. Add a setter or a cabinet first.</source>
   <translation>Noch gibt es keinen Platz für Eier. Erst einen Vorbrüter oder Kombibrüter hinzufügen.</translation>
  </message>
  <message>
   <source>There is no place for its first day: add {what} first.</source>
   <translation>Für seinen ersten Tag gibt es keinen Platz: erst {what} hinzufügen.</translation>
  </message>
  <message>
   <source>There is nothing to show yet. Add your places (Change › Add a place): what holds the eggs, the brooder, the pen. Then add a batch (Change › Add a batch), and print this page again.</source>
   <translation>Es gibt noch nichts zu zeigen. Die Plätze hinzufügen (Ändern › Platz hinzufügen): was die Eier hält, die Aufzuchtbox, die Voliere. Dann einen Satz hinzufügen (Ändern › Satz hinzufügen) und diese Seite noch einmal drucken.</translation>
  </message>
  <message>
   <source>These are the chores of the plan, not of the trial “{trial}”: here stands what happens.</source>
   <translation>Das sind die Aufgaben des Plans, nicht des Versuchs „{trial}“: Hier steht, was geschieht.</translation>
  </message>
  <message>
   <source>This desktop has no tray for notices, so there is none. The phone can tell: Farm › Calendar file.</source>
   <translation>Dieser Schreibtisch hat keinen Ort für Meldungen, also gibt es keine. Das Telefon kann es sagen: Hof › Kalenderdatei.</translation>
  </message>
  <message>
   <source>This is an example. Farm › New farm begins your own; F1 tells how.</source>
   <translation>Dies ist ein Beispiel. Hof › Neuer Hof beginnt den eigenen; F1 sagt wie.</translation>
  </message>
  <message>
   <source>Three months in view</source>
   <translation>Drei Monate zeigen</translation>
  </message>
  <message>
   <source>Three years in view</source>
   <translation>Drei Jahre zeigen</translation>
  </message>
  <message>
   <source>Tick it once more to record it all the same.</source>
   <translation>Noch einmal abhaken trägt es trotzdem ein.</translation>
  </message>
  <message>
   <source>Tick it. Keys: P put it off, L leave it out, G give it to somebody</source>
   <translation>Abhaken. Tasten: P verschieben, L auslassen, G jemandem geben</translation>
  </message>
  <message>
   <source>To</source>
   <translation>Bis</translation>
  </message>
  <message>
   <source>To which place? {names}</source>
   <translation>An welchen Platz? {names}</translation>
  </message>
  <message>
   <source>Toda&amp;y</source>
   <translation>He&amp;ute</translation>
  </message>
  <message>
   <source>Today</source>
   <translation>Heute</translation>
  </message>
  <message>
   <source>Trial “{trial}”</source>
   <translation>Versuch „{trial}“</translation>
  </message>
  <message>
   <source>Try changes beside the plan</source>
   <translation>Änderungen neben dem Plan ausprobieren</translation>
  </message>
  <message>
   <source>Trying every day …</source>
   <translation>Jeder Tag wird versucht …</translation>
  </message>
  <message>
   <source>Trying small changes …</source>
   <translation>Kleine Änderungen werden versucht …</translation>
  </message>
  <message>
   <source>Turns the eggs by itself</source>
   <translation>Wendet die Eier selbst</translation>
  </message>
  <message>
   <source>Undo</source>
   <translation>Zurücknehmen</translation>
  </message>
  <message>
   <source>Undo brings it back.</source>
   <translation>Zurücknehmen bringt es wieder.</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <source>Usable floor; width times length fills it</source>
   <translation>Nutzbare Fläche; Breite mal Länge füllt sie aus</translation>
  </message>
  <message>
   <source>Use the &amp;published value again</source>
   <translation>Wieder den &amp;veröffentlichten Wert nehmen</translation>
  </message>
  <message>
   <source>Usual route</source>
   <translation>Üblicher Weg</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>Version and cautions</source>
   <translation>Version und Hinweise zur Vorsicht</translation>
  </message>
  <message>
   <source>W&amp;ho</source>
   <translation>We&amp;r</translation>
  </message>
  <message>
   <source>Was due on {weekday}, {day}. {how}</source>
   <translation>War fällig am {weekday}, {day}. {how}</translation>
  </message>
  <message>
   <source>Ways out, each re-checked</source>
   <translation>Auswege, jeder neu geprüft</translation>
  </message>
  <message>
   <source>Weeks of chores</source>
   <translation>Wochen der Aufgaben</translation>
  </message>
  <message>
   <source>Weight against the curve</source>
   <translation>Gewicht gegen die Kurve</translation>
  </message>
  <message>
   <source>Weight expected</source>
   <translation>Gewicht erwartet</translation>
  </message>
  <message>
   <source>Weight found</source>
   <translation>Gewicht gefunden</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>What do you want to try?</source>
   <translation>Was möchtest du versuchen?</translation>
  </message>
  <message>
   <source>What happens, or why not</source>
   <translation>Was geschieht, oder warum nicht</translation>
  </message>
  <message>
   <source>What has died, hatched, was laid or fed</source>
   <translation>Was gestorben, geschlüpft, gelegt oder gefüttert ist</translation>
  </message>
  <message>
   <source>What has moved</source>
   <translation>Was sich verschoben hat</translation>
  </message>
  <message>
   <source>What is due, to tick and to count</source>
   <translation>Was ansteht, zum Abhaken und Eintragen</translation>
  </message>
  <message>
   <source>What is due, to tick and to count (Ctrl+2)</source>
   <translation>Was ansteht, zum Abhaken und Eintragen (Strg+2)</translation>
  </message>
  <message>
   <source>What is it a count of? Such as died, eggs, hatched, clear, sold, fed, weighed.</source>
   <translation>Wovon? Zum Beispiel tot, Eier, geschlüpft, klar, verkauft, Futter, gewogen.</translation>
  </message>
  <message>
   <source>What is it called?</source>
   <translation>Wie heißt er?</translation>
  </message>
  <message>
   <source>What is the note? Its words come after “note”.</source>
   <translation>Was ist die Notiz? Ihre Worte kommen nach „Notiz“.</translation>
  </message>
  <message>
   <source>What is your farm called?</source>
   <translation>Wie heißt dein Hof?</translation>
  </message>
  <message>
   <source>What the cell rests on</source>
   <translation>Worauf die Zelle beruht</translation>
  </message>
  <message>
   <source>What the keys and the mouse do</source>
   <translation>Was die Tasten und die Maus tun</translation>
  </message>
  <message>
   <source>What there is one of in a farm</source>
   <translation>Was es auf einem Hof einmal gibt</translation>
  </message>
  <message>
   <source>What was recorded is never changed: a correction stands in its place, and what it said before below.</source>
   <translation>Was eingetragen wurde, ändert sich nie: An seiner Stelle steht eine Berichtigung, darunter, was vorher da stand.</translation>
  </message>
  <message>
   <source>What you change stays in it; dashed outlines show the plan.</source>
   <translation>Was du änderst, bleibt in ihm; gestrichelte Umrisse zeigen den Plan.</translation>
  </message>
  <message>
   <source>When can the next eggs go in, and how many?</source>
   <translation>Wann können die nächsten Eier hinein, und wie viele?</translation>
  </message>
  <message>
   <source>When can the next eggs go in?</source>
   <translation>Wann wieder Eier einlegen?</translation>
  </message>
  <message>
   <source>When the next eggs can go in, and how many</source>
   <translation>Wann die nächsten Eier hinein können, und wie viele</translation>
  </message>
  <message>
   <source>When the next eggs can go in, and how many (Ctrl+3)</source>
   <translation>Wann die nächsten Eier hinein können, und wie viele (Strg+3)</translation>
  </message>
  <message>
   <source>Where birds can drink, all round. {empty}</source>
   <translation>Wo Vögel trinken können, ringsum. {empty}</translation>
  </message>
  <message>
   <source>Where birds can eat, both sides counted. {empty}</source>
   <translation>Wo Vögel fressen können, beide Seiten gezählt. {empty}</translation>
  </message>
  <message>
   <source>Where now</source>
   <translation>Wo jetzt</translation>
  </message>
  <message>
   <source>Which &amp;birds</source>
   <translation>Welche &amp;Vögel</translation>
  </message>
  <message>
   <source>Which place? {names}</source>
   <translation>Welcher Platz? {names}</translation>
  </message>
  <message>
   <source>Why do you live with it?</source>
   <translation>Warum lebst du damit?</translation>
  </message>
  <message>
   <source>Why do you live with it? It is a clash again when it grows.</source>
   <translation>Warum lebst du damit? Er ist wieder ein Engpass, wenn er wächst.</translation>
  </message>
  <message>
   <source>Width, fills the floor</source>
   <translation>Breite, füllt die Fläche aus</translation>
  </message>
  <message>
   <source>Without them, moves into the cold cannot be seen</source>
   <translation>Ohne sie sind Umzüge in die Kälte nicht zu sehen</translation>
  </message>
  <message>
   <source>Wo&amp;rk left</source>
   <translation>Noch zu &amp;bauen</translation>
  </message>
  <message>
   <source>Words in any order, as short as you like: d is one that died (F8)</source>
   <translation>Wörter in beliebiger Reihenfolge, so kurz wie gewünscht: t ist ein totes Tier (F8)</translation>
  </message>
  <message>
   <source>Work counted on</source>
   <translation>Arbeit gezählt am</translation>
  </message>
  <message>
   <source>Work left, in hours</source>
   <translation>Arbeit übrig, in Stunden</translation>
  </message>
  <message>
   <source>Working it out…</source>
   <translation>Wird berechnet …</translation>
  </message>
  <message>
   <source>Write every chore into a file that phones and calendars read</source>
   <translation>Alle Aufgaben in eine Datei schreiben, die Telefone und Kalender lesen</translation>
  </message>
  <message>
   <source>Write every kind of record as tables (CSV)</source>
   <translation>Alle Arten von Aufzeichnungen als Tabellen schreiben (CSV)</translation>
  </message>
  <message>
   <source>Write the calendar to</source>
   <translation>Den Kalender schreiben nach</translation>
  </message>
  <message>
   <source>Write the whole farm as one JSON document</source>
   <translation>Den ganzen Hof als ein JSON-Dokument schreiben</translation>
  </message>
  <message>
   <source>Written down</source>
   <translation>Eingetragen</translation>
  </message>
  <message>
   <source>Year</source>
   <translation>Jahr</translation>
  </message>
  <message>
   <source>You are looking at {label}.</source>
   <translation>Zu sehen: {label}.</translation>
  </message>
  <message>
   <source>Young before old, healthy before sick, quarantine last.</source>
   <translation>Jung vor alt, gesund vor krank, Quarantäne zuletzt.</translation>
  </message>
  <message>
   <source>Your own farm in five steps</source>
   <translation>Der eigene Hof in fünf Schritten</translation>
  </message>
  <message>
   <source>Yours</source>
   <translation>Deiner</translation>
  </message>
  <message>
   <source>Zoom &amp;in</source>
   <translation>Ver&amp;größern</translation>
  </message>
  <message>
   <source>Zoom &amp;out</source>
   <translation>Ver&amp;kleinern</translation>
  </message>
  <message>
   <source>a brooder or a pen</source>
   <translation>Aufzuchtbox oder Voliere</translation>
  </message>
  <message>
   <source>a crowd</source>
   <translation>Gedränge</translation>
  </message>
  <message>
   <source>a curve, {shape}</source>
   <translation>eine Kurve, {shape}</translation>
  </message>
  <message>
   <source>a formula</source>
   <translation>eine Formel</translation>
  </message>
  <message>
   <source>a setter or a cabinet</source>
   <translation>Vorbrüter oder Kombibrüter</translation>
  </message>
  <message>
   <source>about {alive} alive at the move out on {day}</source>
   <translation>etwa {alive} leben beim Umzug am {day}</translation>
  </message>
  <message>
   <source>about {birds} of {number} should hatch on {day} ({odds})</source>
   <translation>etwa {birds} von {number} sollten am {day} schlüpfen ({odds})</translation>
  </message>
  <message>
   <source>accepted clash</source>
   <translation>hingenommener Engpass</translation>
  </message>
  <message>
   <source>accepted clashes</source>
   <translation>hingenommene Engpässe</translation>
  </message>
  <message>
   <source>age in weeks</source>
   <translation>Alter in Wochen</translation>
  </message>
  <message>
   <source>age:value, such as 0:103 10:155 42:310</source>
   <translation>Alter:Wert, etwa 0:103 10:155 42:310</translation>
  </message>
  <message>
   <source>ago</source>
   <translation>vor</translation>
  </message>
  <message>
   <source>all rows</source>
   <translation>alle Zeilen</translation>
  </message>
  <message>
   <source>and {chores} more</source>
   <translation>und {chores} mehr</translation>
  </message>
  <message>
   <source>and {count} more</source>
   <translation>und {count} weitere</translation>
  </message>
  <message>
   <source>and {number} more</source>
   <translation>und {number} weitere</translation>
  </message>
  <message>
   <source>as found</source>
   <translation>wie gefunden</translation>
  </message>
  <message>
   <source>as found: {found}</source>
   <translation>wie gefunden: {found}</translation>
  </message>
  <message>
   <source>as it is: {rule}</source>
   <translation>wie es ist: {rule}</translation>
  </message>
  <message>
   <source>as on {day}, printed {printed}</source>
   <translation>Stand {day}, gedruckt {printed}</translation>
  </message>
  <message>
   <source>at 10 days</source>
   <translation>mit 10 Tagen</translation>
  </message>
  <message>
   <source>at 25 days</source>
   <translation>mit 25 Tagen</translation>
  </message>
  <message>
   <source>bedding, litter</source>
   <translation>einstreu, streu</translation>
  </message>
  <message>
   <source>birds of another batch</source>
   <translation>Vögel eines anderen Satzes</translation>
  </message>
  <message>
   <source>bought</source>
   <translation>kauf, gekauft</translation>
  </message>
  <message>
   <source>built, finished</source>
   <translation>fertig, gebaut</translation>
  </message>
  <message>
   <source>chores {days}</source>
   <translation>Aufgaben {days}</translation>
  </message>
  <message>
   <source>clear, infertile</source>
   <translation>klar, unbefruchtet</translation>
  </message>
  <message>
   <source>cocks, cock</source>
   <translation>hähne, hahn</translation>
  </message>
  <message>
   <source>cold nights</source>
   <translation>kalte Nächte</translation>
  </message>
  <message>
   <source>comes {days}</source>
   <translation>kommt {days}</translation>
  </message>
  <message>
   <source>comma, as in 1,5</source>
   <translation>Komma, wie in 1,5</translation>
  </message>
  <message>
   <source>counted on</source>
   <translation>gezählt am</translation>
  </message>
  <message>
   <source>counted until {day}</source>
   <translation>gezählt bis {day}</translation>
  </message>
  <message>
   <source>day {age}: {found}, expected {expected}</source>
   <translation>Tag {age}: {found}, erwartet {expected}</translation>
  </message>
  <message>
   <source>died, dead</source>
   <translation>tot, gestorben, verendet</translation>
  </message>
  <message>
   <source>done on {day}</source>
   <translation>erledigt am {day}</translation>
  </message>
  <message>
   <source>dry yet</source>
   <translation>noch trocken</translation>
  </message>
  <message>
   <source>each batch, of eggs set</source>
   <translation>jeder Satz, der eingelegten Eier</translation>
  </message>
  <message>
   <source>eggs, laid, egg</source>
   <translation>eier, gelegt, ei</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>leer</translation>
  </message>
  <message>
   <source>every </source>
   <translation>alle </translation>
  </message>
  <message>
   <source>every day</source>
   <translation>jeden Tag</translation>
  </message>
  <message>
   <source>every month</source>
   <translation>jeden Monat</translation>
  </message>
  <message>
   <source>every week</source>
   <translation>jede Woche</translation>
  </message>
  <message>
   <source>every year</source>
   <translation>jedes Jahr</translation>
  </message>
  <message>
   <source>every {step} days</source>
   <translation>alle {step} Tage</translation>
  </message>
  <message>
   <source>every {step} months</source>
   <translation>alle {step} Monate</translation>
  </message>
  <message>
   <source>every {step} weeks</source>
   <translation>alle {step} Wochen</translation>
  </message>
  <message>
   <source>every {step} years</source>
   <translation>alle {step} Jahre</translation>
  </message>
  <message>
   <source>expected of {kind}</source>
   <translation>erwartet: {kind}</translation>
  </message>
  <message>
   <source>fed, feed</source>
   <translation>futter, gefüttert, verfüttert</translation>
  </message>
  <message>
   <source>feet, ounces, °F</source>
   <translation>Fuß, Unzen, °F</translation>
  </message>
  <message>
   <source>first eggs about {day}</source>
   <translation>erste Eier um den {day}</translation>
  </message>
  <message>
   <source>for birds a brooder or pen is accepted</source>
   <translation>für Vögel wird eine Aufzuchtbox oder Voliere angenommen</translation>
  </message>
  <message>
   <source>for eggs a setter, hatcher or cabinet is accepted</source>
   <translation>für Eier wird ein Vorbrüter, Schlupfbrüter oder Kombibrüter angenommen</translation>
  </message>
  <message>
   <source>free {day}</source>
   <translation>frei {day}</translation>
  </message>
  <message>
   <source>go on</source>
   <translation>weiter</translation>
  </message>
  <message>
   <source>grown</source>
   <translation>ausgewachsen</translation>
  </message>
  <message>
   <source>grown bird</source>
   <translation>ausgewachsenen Vogel</translation>
  </message>
  <message>
   <source>grown birds</source>
   <translation>ausgewachsene Vögel</translation>
  </message>
  <message>
   <source>grown-up</source>
   <translation>erwachsen</translation>
  </message>
  <message>
   <source>h, hours, hour</source>
   <translation>h, std, stunden, stunde</translation>
  </message>
  <message>
   <source>hens, hen</source>
   <translation>hennen, henne</translation>
  </message>
  <message>
   <source>hours, worked</source>
   <translation>stunden, gearbeitet</translation>
  </message>
  <message>
   <source>in {days}</source>
   <translation>noch {days}</translation>
  </message>
  <message>
   <source>it begins with the batch: move the whole band</source>
   <translation>er beginnt mit dem Satz: das ganze Band verschieben</translation>
  </message>
  <message>
   <source>its own beginning</source>
   <translation>sein eigener Anfang</translation>
  </message>
  <message>
   <source>last</source>
   <translation>letzten</translation>
  </message>
  <message>
   <source>last week</source>
   <translation>letzte Woche</translation>
  </message>
  <message>
   <source>left out: {reason}</source>
   <translation>ausgelassen: {reason}</translation>
  </message>
  <message>
   <source>lockdown on {day}</source>
   <translation>Umlegen am {day}</translation>
  </message>
  <message>
   <source>long</source>
   <translation>lang</translation>
  </message>
  <message>
   <source>metres, grams, °C</source>
   <translation>Meter, Gramm, °C</translation>
  </message>
  <message>
   <source>month</source>
   <translation>Monat</translation>
  </message>
  <message>
   <source>need {need}, have {have}</source>
   <translation>nötig {need}, vorhanden {have}</translation>
  </message>
  <message>
   <source>next</source>
   <translation>nächsten</translation>
  </message>
  <message>
   <source>next week</source>
   <translation>nächste Woche</translation>
  </message>
  <message>
   <source>no batch</source>
   <translation>kein Satz</translation>
  </message>
  <message>
   <source>no clash ahead</source>
   <translation>kein Engpass voraus</translation>
  </message>
  <message>
   <source>no clash comes or goes</source>
   <translation>kein Engpass kommt oder geht</translation>
  </message>
  <message>
   <source>no clean-out</source>
   <translation>kein Ausmisten</translation>
  </message>
  <message>
   <source>no place</source>
   <translation>kein Platz</translation>
  </message>
  <message>
   <source>nobody home</source>
   <translation>niemand da</translation>
  </message>
  <message>
   <source>nobody planned</source>
   <translation>niemand geplant</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>noch keins</translation>
  </message>
  <message>
   <source>not built</source>
   <translation>nicht gebaut</translation>
  </message>
  <message>
   <source>not on the farm</source>
   <translation>nicht auf dem Hof</translation>
  </message>
  <message>
   <source>not ready</source>
   <translation>nicht fertig</translation>
  </message>
  <message>
   <source>not yet</source>
   <translation>noch nicht</translation>
  </message>
  <message>
   <source>nothing is due</source>
   <translation>nichts steht an</translation>
  </message>
  <message>
   <source>of eggs set</source>
   <translation>der eingelegten Eier</translation>
  </message>
  <message>
   <source>of fertile eggs</source>
   <translation>der befruchteten Eier</translation>
  </message>
  <message>
   <source>of, in, the, from, at, on, to, for, and, with, eggs, egg, chicks, chick, birds, bird, feed</source>
   <translation>von, in, im, der, die, das, den, aus, an, am, bei, nach, für, und, mit, eier, ei, küken, vögel, vogel, tiere, futter</translation>
  </message>
  <message>
   <source>old eggs</source>
   <translation>alte Eier</translation>
  </message>
  <message>
   <source>once</source>
   <translation>einmal</translation>
  </message>
  <message>
   <source>or wide</source>
   <translation>oder breit</translation>
  </message>
  <message>
   <source>page {number} of {many}</source>
   <translation>Seite {number} von {many}</translation>
  </message>
  <message>
   <source>pairs of age and value are accepted, such as 0:103 10:155 42:310</source>
   <translation>Paare aus Alter und Wert werden angenommen, etwa 0:103 10:155 42:310</translation>
  </message>
  <message>
   <source>past their day</source>
   <translation>überfällig</translation>
  </message>
  <message>
   <source>plan: {plan}</source>
   <translation>Plan: {plan}</translation>
  </message>
  <message>
   <source>point</source>
   <translation>Punkt</translation>
  </message>
  <message>
   <source>point, as in 1.5</source>
   <translation>Punkt, wie in 1.5</translation>
  </message>
  <message>
   <source>printed {day}</source>
   <translation>gedruckt {day}</translation>
  </message>
  <message>
   <source>processed, slaughtered</source>
   <translation>schlachtung, geschlachtet</translation>
  </message>
  <message>
   <source>ready {day}</source>
   <translation>fertig {day}</translation>
  </message>
  <message>
   <source>room for {count}</source>
   <translation>Platz für {count}</translation>
  </message>
  <message>
   <source>set {days}</source>
   <translation>einlegen {days}</translation>
  </message>
  <message>
   <source>shipped eggs, rested first</source>
   <translation>verschickte Eier, erst geruht</translation>
  </message>
  <message>
   <source>short by {amount}</source>
   <translation>es fehlen: {amount}</translation>
  </message>
  <message>
   <source>short days</source>
   <translation>kurze Tage</translation>
  </message>
  <message>
   <source>short drinkers</source>
   <translation>zu kurze Tränken</translation>
  </message>
  <message>
   <source>short feeders</source>
   <translation>zu kurze Tröge</translation>
  </message>
  <message>
   <source>sold on Friday</source>
   <translation>am Freitag verkauft</translation>
  </message>
  <message>
   <source>split {place}</source>
   <translation>{place} teilen</translation>
  </message>
  <message>
   <source>stay until replaced</source>
   <translation>bleiben, bis sie ersetzt werden</translation>
  </message>
  <message>
   <source>stay until replaced: until the end of their lay</source>
   <translation>bleiben, bis sie ersetzt werden: bis zum Ende ihrer Legezeit</translation>
  </message>
  <message>
   <source>the whole farm</source>
   <translation>der ganze Hof</translation>
  </message>
  <message>
   <source>there is no other place of the kind to split over</source>
   <translation>es gibt keinen anderen Platz dieser Art zum Aufteilen</translation>
  </message>
  <message>
   <source>thought of</source>
   <translation>gedacht</translation>
  </message>
  <message>
   <source>today</source>
   <translation>heute</translation>
  </message>
  <message>
   <source>tomorrow</source>
   <translation>morgen</translation>
  </message>
  <message>
   <source>too few birds</source>
   <translation>zu wenige Vögel</translation>
  </message>
  <message>
   <source>too small</source>
   <translation>zu klein</translation>
  </message>
  <message>
   <source>too young</source>
   <translation>zu jung</translation>
  </message>
  <message>
   <source>turning and lockdown</source>
   <translation>Wenden und Umlegen</translation>
  </message>
  <message>
   <source>two ages</source>
   <translation>zwei Alter</translation>
  </message>
  <message>
   <source>was due on {weekday}, {day}</source>
   <translation>war fällig am {weekday}, {day}</translation>
  </message>
  <message>
   <source>week</source>
   <translation>Woche</translation>
  </message>
  <message>
   <source>weighed, weight</source>
   <translation>wiegen, gewogen, gewicht</translation>
  </message>
  <message>
   <source>where</source>
   <translation>wo</translation>
  </message>
  <message>
   <source>who</source>
   <translation>wer</translation>
  </message>
  <message>
   <source>why</source>
   <translation>warum</translation>
  </message>
  <message>
   <source>without a gap</source>
   <translation>ohne Pause</translation>
  </message>
  <message>
   <source>wk</source>
   <translation>KW</translation>
  </message>
  <message>
   <source>yesterday</source>
   <translation>gestern</translation>
  </message>
  <message>
   <source>young person</source>
   <translation>jung</translation>
  </message>
  <message>
   <source>your curve</source>
   <translation>deine Kurve</translation>
  </message>
  <message>
   <source>your own</source>
   <translation>dein eigener</translation>
  </message>
  <message>
   <source>{batch} a day earlier</source>
   <translation>{batch} einen Tag früher</translation>
  </message>
  <message>
   <source>{batch} a day later</source>
   <translation>{batch} einen Tag später</translation>
  </message>
  <message>
   <source>{batch} a week earlier</source>
   <translation>{batch} eine Woche früher</translation>
  </message>
  <message>
   <source>{batch} a week later</source>
   <translation>{batch} eine Woche später</translation>
  </message>
  <message>
   <source>{batch} comes into {place}: {start}</source>
   <translation>{batch} kommt nach {place}: {start}</translation>
  </message>
  <message>
   <source>{batch} has no birds today.</source>
   <translation>{batch} hat heute keine Vögel.</translation>
  </message>
  <message>
   <source>{batch} has {birds} on {day}</source>
   <translation>{batch} hat am {day} {birds}</translation>
  </message>
  <message>
   <source>{batch} in {place}, {days}</source>
   <translation>{batch} in {place}, {days}</translation>
  </message>
  <message>
   <source>{batch} joins another batch</source>
   <translation>{batch} kommt zu einem anderen Satz</translation>
  </message>
  <message>
   <source>{batch} leaves {place}: {end}</source>
   <translation>{batch} verlässt {place}: {end}</translation>
  </message>
  <message>
   <source>{batch}, first stay</source>
   <translation>{batch}, erster Aufenthalt</translation>
  </message>
  <message>
   <source>{batch}, place</source>
   <translation>{batch}, Platz</translation>
  </message>
  <message>
   <source>{batch}, {part}</source>
   <translation>{batch}, {part}</translation>
  </message>
  <message>
   <source>{batch}: {birds} counted, {age} old, {stage}</source>
   <translation>{batch}: {birds} gezählt, {age} alt, {stage}</translation>
  </message>
  <message>
   <source>{batch}: {birds}, {age} old, {stage}</source>
   <translation>{batch}: {birds}, {age} alt, {stage}</translation>
  </message>
  <message>
   <source>{batch}: {eggs}, day {number}, {stage}</source>
   <translation>{batch}: {eggs}, Tag {number}, {stage}</translation>
  </message>
  <message>
   <source>{chores} fall on these days.</source>
   <translation>{chores} fallen auf diese Tage.</translation>
  </message>
  <message>
   <source>{chores} in the next {days} days</source>
   <translation>{chores} in den nächsten {days} Tagen</translation>
  </message>
  <message>
   <source>{chores} today</source>
   <translation>heute {chores}</translation>
  </message>
  <message>
   <source>{chores}, done</source>
   <translation>{chores}, erledigt</translation>
  </message>
  <message>
   <source>{chores}, {done} of them done</source>
   <translation>{chores}, {done} davon erledigt</translation>
  </message>
  <message>
   <source>{chores}, {left} left</source>
   <translation>{chores}, {left} offen</translation>
  </message>
  <message>
   <source>{chores}, {overdue} overdue</source>
   <translation>{chores}, {overdue} überfällig</translation>
  </message>
  <message>
   <source>{chores}. First: {chore}.</source>
   <translation>{chores}. Zuerst: {chore}.</translation>
  </message>
  <message>
   <source>{clashes} ahead</source>
   <translation>{clashes} voraus</translation>
  </message>
  <message>
   <source>{clash}, accepted</source>
   <translation>{clash}, hingenommen</translation>
  </message>
  <message>
   <source>{clash}, less</source>
   <translation>{clash}, weniger</translation>
  </message>
  <message>
   <source>{clash}, more</source>
   <translation>{clash}, mehr</translation>
  </message>
  <message>
   <source>{clash}: this stops the plan, so it cannot be accepted.</source>
   <translation>{clash}: Das verhindert den Plan, also lässt es sich nicht hinnehmen.</translation>
  </message>
  <message>
   <source>{count} ahead, {accepted} more accepted</source>
   <translation>{count} voraus, {accepted} weitere hingenommen</translation>
  </message>
  <message>
   <source>{count}. Left and right go through batches, up and down through clashes.</source>
   <translation>{count}. Links und rechts gehen durch die Sätze, hinauf und hinunter durch die Engpässe.</translation>
  </message>
  <message>
   <source>{days} ago</source>
   <translation>{days} her</translation>
  </message>
  <message>
   <source>{days}, {sure}</source>
   <translation>{days}, {sure}</translation>
  </message>
  <message>
   <source>{day} is still to come: what has happened is recorded.</source>
   <translation>{day} kommt erst noch: Eingetragen wird, was geschehen ist.</translation>
  </message>
  <message>
   <source>{day}, continued</source>
   <translation>{day}, Fortsetzung</translation>
  </message>
  <message>
   <source>{day}: {count} of {eggs}</source>
   <translation>{day}: {count} von {eggs}</translation>
  </message>
  <message>
   <source>{error} Here is the example instead.</source>
   <translation>{error} Hier ist stattdessen das Beispiel.</translation>
  </message>
  <message>
   <source>{fact} ({difference})</source>
   <translation>{fact} ({difference})</translation>
  </message>
  <message>
   <source>{farm} is kept in {path}. Every change is saved at once.</source>
   <translation>{farm} liegt in {path}. Jede Änderung ist sofort gespeichert.</translation>
  </message>
  <message>
   <source>{field}, stay {number}</source>
   <translation>{field}, Aufenthalt {number}</translation>
  </message>
  <message>
   <source>{file} cannot be written: a name that ends in {known} is accepted.</source>
   <translation>{file} kann nicht geschrieben werden: ein Name, der auf {known} endet, wird angenommen.</translation>
  </message>
  <message>
   <source>{group}: {clashes}</source>
   <translation>{group}: {clashes}</translation>
  </message>
  <message>
   <source>{label}. Ctrl+Z takes it back.</source>
   <translation>{label}. Strg+Z nimmt es zurück.</translation>
  </message>
  <message>
   <source>{label}. Moved by it: {what}{more}.</source>
   <translation>{label}. Dadurch verschoben: {what}{more}.</translation>
  </message>
  <message>
   <source>{label}. Moved: {what}.</source>
   <translation>{label}. Verschoben: {what}.</translation>
  </message>
  <message>
   <source>{name}, trial “{trial}”</source>
   <translation>{name}, Versuch „{trial}“</translation>
  </message>
  <message>
   <source>{new} in place of {old}</source>
   <translation>{new} statt {old}</translation>
  </message>
  <message>
   <source>{number} birds in</source>
   <translation>{number} Vögel darin</translation>
  </message>
  <message>
   <source>{number} chores{of_plan} are in {file}. Write it again after changes: entries are brought up to date.</source>
   <translation>{number} Aufgaben{of_plan} sind in {file}. Nach Änderungen noch einmal schreiben: Einträge werden aktualisiert.</translation>
  </message>
  <message>
   <source>{number} eggs in</source>
   <translation>{number} Eier darin</translation>
  </message>
  <message>
   <source>{number} expected</source>
   <translation>{number} erwartet</translation>
  </message>
  <message>
   <source>{number} is a number too many here.</source>
   <translation>{number} ist hier eine Zahl zu viel.</translation>
  </message>
  <message>
   <source>{often} on {days}</source>
   <translation>{often} am {days}</translation>
  </message>
  <message>
   <source>{often}: {days} …</source>
   <translation>{often}: {days} …</translation>
  </message>
  <message>
   <source>{old} → {new}, {days} earlier</source>
   <translation>{old} → {new}, {days} früher</translation>
  </message>
  <message>
   <source>{old} → {new}, {days} later</source>
   <translation>{old} → {new}, {days} später</translation>
  </message>
  <message>
   <source>{path} is not there any more.</source>
   <translation>{path} ist nicht mehr da.</translation>
  </message>
  <message>
   <source>{place}, {use}: {value}, {eggs}</source>
   <translation>{place}, {use}: {value}, {eggs}</translation>
  </message>
  <message>
   <source>{points} {unit}, by age in days</source>
   <translation>{points} {unit}, nach Alter in Tagen</translation>
  </message>
  <message>
   <source>{rows} rows are in {tables} tables in {folder}.</source>
   <translation>{rows} Zeilen sind in {tables} Tabellen in {folder}.</translation>
  </message>
  <message>
   <source>{state}: {what}</source>
   <translation>{state}: {what}</translation>
  </message>
  <message>
   <source>{taken} of {places} taken</source>
   <translation>{taken} von {places} belegt</translation>
  </message>
  <message>
   <source>{text}. In view: {days}. {clashes} ahead</source>
   <translation>{text}. Zu sehen: {days}. Voraus: {clashes}</translation>
  </message>
  <message>
   <source>{tip}; beside these, {lived_with}</source>
   <translation>{tip}; außerdem {lived_with}</translation>
  </message>
  <message>
   <source>{title} is in {file}.</source>
   <translation>{title} ist in {file}.</translation>
  </message>
  <message>
   <source>{title}: on its way to the printer.</source>
   <translation>{title}: unterwegs zum Drucker.</translation>
  </message>
  <message>
   <source>{what}  (taken back)</source>
   <translation>{what}  (zurückgenommen)</translation>
  </message>
  <message>
   <source>{what}  (the farm is here)</source>
   <translation>{what}  (der Hof steht hier)</translation>
  </message>
  <message>
   <source>{what}, and {number} more</source>
   <translation>{what}, und {number} weitere</translation>
  </message>
  <message>
   <source>{what}: not possible</source>
   <translation>{what}: nicht möglich</translation>
  </message>
  <message>
   <source>{who}, in {place} ({room})</source>
   <translation>{who}, in {place} ({room})</translation>
  </message>
  <message>
   <source>{why}, ready {day}</source>
   <translation>{why}, fertig {day}</translation>
  </message>
  <message>
   <source>° north</source>
   <translation>° Nord</translation>
  </message>
  <message>
   <source>“{name}” beside the plan</source>
   <translation>„{name}“ neben dem Plan</translation>
  </message>
  <message>
   <source>“{sort}” has a form of its own, in the page of the batch.</source>
   <translation>„{sort}“ hat ein eigenes Formular, auf der Seite des Satzes.</translation>
  </message>
  <message>
   <source>“{word}” is no whole number.</source>
   <translation>„{word}“ ist keine ganze Zahl.</translation>
  </message>
  <message>
   <source>“{word}” is not understood here.</source>
   <translation>„{word}“ wird hier nicht verstanden.</translation>
  </message>
  <message>
   <source>• and {number} more</source>
   <translation>• und {number} weitere</translation>
  </message>
 </context>
</TS>
