<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>quailsched</name>
  <message>
   <source> (laying group)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> (surplus cocks)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> From {count} on a group is calm in it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> The details are in {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> hours a day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> hours a week</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> of 100 hatches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> of the plan, not of the trial,</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> sq ft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;About Quailsched</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Age when they come</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Birds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Building</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Calendar file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Change</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Clean-out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Come on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Compare with the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Drop it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Egg places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Example farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Fit the season</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;From</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Heat sources</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Import a document…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Keep it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Keys and mouse</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Latitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Light by lamps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;New farm…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Next clash</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Open farm…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Previous clash</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Rename…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Season</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Set on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Show</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Start a trial…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Trials</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Undo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Units</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;What it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Why</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&amp;Yours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, {number} of them new</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&lt;h3&gt;Keys and mouse&lt;/h3&gt;
&lt;p&gt;&lt;b&gt;Left, Right&lt;/b&gt; go through the batches, &lt;b&gt;Up, Down&lt;/b&gt; or &lt;b&gt;F3&lt;/b&gt; through the clashes.&lt;br&gt;
&lt;b&gt;Alt+Left, Alt+Right&lt;/b&gt; move the picked batch by a day, with &lt;b&gt;Shift&lt;/b&gt; by a week.&lt;br&gt;
&lt;b&gt;Ctrl+Shift+A&lt;/b&gt; accepts the picked clash, if it is one to watch; &lt;b&gt;Return&lt;/b&gt; says why, &lt;b&gt;Esc&lt;/b&gt; leaves it.&lt;br&gt;
&lt;b&gt;Return&lt;/b&gt; or a double click opens it, &lt;b&gt;Ctrl+E&lt;/b&gt; too; &lt;b&gt;Ctrl+Del&lt;/b&gt; removes it. &lt;b&gt;Esc&lt;/b&gt; lets it go.&lt;br&gt;
&lt;b&gt;+&lt;/b&gt; and &lt;b&gt;−&lt;/b&gt; zoom, as does Ctrl and the wheel about the pointer; &lt;b&gt;Ctrl+0&lt;/b&gt; fits the season.&lt;br&gt;
&lt;b&gt;Home&lt;/b&gt; goes to today, &lt;b&gt;Page Up&lt;/b&gt; and &lt;b&gt;Page Down&lt;/b&gt; through time; drag the paper to push it along.&lt;br&gt;
&lt;b&gt;Ctrl+Shift+T&lt;/b&gt; starts a trial, &lt;b&gt;Ctrl+Shift+C&lt;/b&gt; compares it, &lt;b&gt;Ctrl+Shift+P&lt;/b&gt; goes back to the plan.&lt;br&gt;
A filled red bar below a lane stops the plan, a broken outline is to be watched, a grey one is accepted.&lt;br&gt;
Drag a band to move its batch, its edge to leave a place earlier or later, or into another lane; up or down inside
its lane it splits. &lt;b&gt;Shift&lt;/b&gt; keeps to weeks, &lt;b&gt;Esc&lt;/b&gt; lets go. &lt;b&gt;Ctrl+L&lt;/b&gt; changes between lanes of
places and of batches.&lt;br&gt;
Double click a place's name to change it. The Setup view has everything as tables.&lt;/p&gt;</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>&lt;h3&gt;Quailsched {version}&lt;/h3&gt;
&lt;p&gt;Plans a season of quail: which batches will want the same floor, and when to set the next eggs.&lt;/p&gt;
&lt;p&gt;Its figures carry their sources; a plan is no promise. Heat lamps start fires, birds can carry Salmonella,
dust harms lungs, and killing is for those who are able and allowed. Local rules on keeping, processing and
selling come first. Ask a vet, not a program, about sick birds.&lt;/p&gt;</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>A click sorts by this column, and so does Ctrl+Up or Ctrl+Down in one of its cells.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A cold night in {month}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A day earlier</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A day later</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A grown-up: may do what needs knives</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A setter, hatcher, cabinet, brooder or pen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A&amp;ccept the clash that is picked…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>About Quailsched</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Accept</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Accept…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a &amp;batch…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a &amp;place…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a batch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a p&amp;erson…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a person</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a stay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add another place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add days away</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add days out of use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add what your birds live in: a setter or a cabinet for the eggs, a brooder for the chicks, a pen for grown birds. Then add a batch: its days follow by themselves.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age and value pairs, such as 0:103 10:155 42:310</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All clashes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All clashes of the trial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Another name for the trial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>April</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>As the desktop is set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At most</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>August</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Away</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Back to the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batch {batch}, {what}, {start}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Begin with your places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Begin your own farm in a file of its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Being built, ready on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Best: up to {count} on {day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Birds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Birds feel the nights here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bring today into view</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Brooder: heated floor for chicks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cabinet: setter and hatcher in one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Calendar file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Calendars (*.ics)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cancel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Chan&amp;ge what is picked…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Change the batch that is picked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Change {batch}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Change {person}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Change {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Change…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clashes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clashes ahead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clean-out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Colours as the &amp;desktop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Compare</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Comparing …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Counts on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dar&amp;k</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Day 0 of the batch; its whole route moves along</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days before setting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Days between the last out and the next in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>December</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Do it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Do it: {sentence}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Do the step that was taken back again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Documents (*.json)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Done again: {label}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drin&amp;ker edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drop it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>E&amp;xport everything…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Each day shows the most eggs that make no new clash, with room for all but the largest hatches (how sure: Change › Farm). Below stands what stops more. Drag the point, or use the arrow keys, to another day or fewer eggs.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Empty if you do not want it checked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>English, or another language there is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Every batch has its place, its room and its clean-out. Pick a batch to see its days.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Every figure shows its source. A farm may replace any of them by its own.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Everything else fits. Shows what is accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Everything fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Export everything to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>F&amp;arm: name, units, nights…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Farm: name, units, &amp;nights…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Farms (*.quail);;All files (*)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>February</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fee&amp;der edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fewer days, wider</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Figure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Figures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>First day, {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For places that are being built; none of it on days away</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Frees up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the first to the last hour that lamps are on; what lies between counts as lit. Empty if none is told</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the next start on, Quailsched speaks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the next start on: {language}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Go to &amp;today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Go to the clash before</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Go to the next clash</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Go to the next clash (F3)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Gone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grass pen: moved over grass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hang lamps by a chain and a second cord, well away from bedding: they start fires.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hatch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hatcher: lockdown and hatch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Holds {birds} Coturnix by the figures.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How &amp;sure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How sure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How to &amp;begin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How to begin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>I know how cold a cold night gets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>I know my latitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Import a document</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In so many the next set has room, and enough birds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Insert adds, Return changes, Delete removes; Ctrl+Up or Ctrl+Down sorts by the column of the cell.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>It is in {count}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>It makes no clash.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>It makes {count}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its route is empty: add a stay, or take the usual route.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>January</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>July</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>June</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep the farm in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key: Ctrl+Return</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key: Escape</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key: Return</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key: {key}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keys and mouse</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>La&amp;nguage…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lamps or plates. {empty}. {lamps}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lanes of places or &amp;batches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lanes of places over time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lanes of places over time (Ctrl+1)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Language</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last day, {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left out – {sentence}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length, fills the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Light or dark as the desktop is set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Live with a clash to watch, with a word of why; it comes back when it grows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Live with it, with a word of why. Key: Ctrl+Shift+A</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Look at Pebble Bank, an invented farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Look at the plan again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Look at the trial “{trial}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Make a farm file from an exported document</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>March</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>More days, narrower</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Most eggs by day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Move out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>N&amp;ote</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ne&amp;xt set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>New farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Next set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ni&amp;ghts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No batches yet. Add places first, then the first eggs.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No clash ahead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No clash ahead but accepted ones</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No places yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No places yet. Add a setter, a brooder and a pen.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nobody yet. Add who does the chores.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>None on this day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Note</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing is otherwise than in the plan yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing to redo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing to undo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>November</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Now a batch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Now and next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>October</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Oldest egg s&amp;tored</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>On no day can eggs be set without a new clash. Solve those that there are first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One lane a place or a batch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One lane for each batch: its stays and numbers (Ctrl+L)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One lane for each place: what is taken of it (Ctrl+L)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One more than that</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open a farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open a farm file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Out of use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Out on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pen: fixed, for feathered birds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>People</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pick one to see why.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Places, people, batches and figures (Ctrl+3)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Places, people, batches and figures as tables</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Published</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Range</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Re&amp;move what is picked…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ready on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reason, {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Redo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove the batch that is picked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove the days {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rename the trial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Return shows a figure and lets this farm have its own; Ctrl+Up or Ctrl+Down sorts by the column.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Route</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Say how many eggs go in and when. The route through your places is filled in, and where it goes wrong shows at once.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Se&amp;tup</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Season</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>See it in the season</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>September</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set against people's hours of building until somebody is due here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set eggs or bring birds in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set {count} of {batch} on {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set {count} on {when}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Setter: turns eggs until lockdown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Setup</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Somebody who does chores</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Something went wrong inside the program; what was saved stays saved.{where}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>South of the equator is negative</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Split {batch}: {count} of {number} go to {where}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stage</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Start a trial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stops the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take acceptance back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take the last step back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Taken back: {label}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The &amp;plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The plan and the trial side by side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The plan becomes as the trial is, in one step</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The plan becomes as the trial is; undo takes it back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The season with this batch as an outline; nothing is set yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The trial goes, the plan stays as it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The trial goes, the plan stays as it is; undo brings it back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The trial stays for later, under Trials in the menu</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The two side by side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The whole season in view</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Then</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no place for eggs. Add a setter or a cabinet first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no place for its first day: add {what} first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This is an example. Farm › New farm begins your own; F1 tells how.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Try changes beside the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Trying every day …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Trying small changes …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Turns the eggs by itself</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Undo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Undo brings it back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Unit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Usable floor; width times length fills it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Use the &amp;published value again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Usual route</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Value</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Version and cautions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Watch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ways out, each re-checked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What do you want to try?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is it called?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is your farm called?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the keys and the mouse do</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What there is one of in a farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>When can the next eggs go in, and how many?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>When the next eggs can go in, and how many</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>When the next eggs can go in, and how many (Ctrl+2)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where birds can drink, all round. {empty}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where birds can eat, both sides counted. {empty}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Who</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Why do you live with it?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Why do you live with it? It is a clash again when it grows.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width, fills the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Without them, moves into the cold cannot be seen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wo&amp;rk left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Work counted on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write every chore into a file that phones and calendars read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write the calendar to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write the whole farm as one JSON document</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>You are looking at the trial “{trial}”. What you change stays in it; dashed outlines show the plan.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>You are looking at {label}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Your own farm in five steps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Yours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Zoom &amp;in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Zoom &amp;out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a brooder or a pen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a crowd</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a curve, {shape}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a formula</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a setter or a cabinet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {alive} alive at the move out on {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>about {birds} of {number} should hatch on {day} ({odds})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>accepted clash</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>accepted clashes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>age:value, such as 0:103 10:155 42:310</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>all</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>and {number} more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at 10 days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at 25 days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>birds brought in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cold nights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>comes {days}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>counted on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>feet, ounces, °F</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>first eggs about {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>for birds a brooder or pen is accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>for eggs a setter, hatcher or cabinet is accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>free now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>free {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>go on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>gone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grown bird</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grown birds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grown-up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it begins with the batch: move the whole band</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its own beginning</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>laying group</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lockdown on {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>metres, grams, °C</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>need {need}, have {have}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no clash ahead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no clash comes or goes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no clean-out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nobody home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nobody planned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not on the farm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not ready</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not told</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>old eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>or wide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>out of use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pairs of age and value are accepted, such as 0:103 10:155 42:310</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>past their day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>processed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ready {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>room for {count}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>set {days}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shipped eggs, rested first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>short days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>short drinkers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>short feeders</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sold on Friday</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>split {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stay until replaced</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stay until replaced: until the end of their lay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no other place of the kind to split over</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thought of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too few birds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too little heat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too many cocks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too many eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too small</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too young</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>turning and lockdown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>two ages</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>young person</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>your curve</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>your own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{batch} comes into {place}: {start}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{batch} leaves {place}: {end}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{batch}, first stay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{batch}, place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{batch}: {birds}, {age} old, {stage}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{batch}: {eggs}, day {number}, {stage}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{chores} in the next {days} days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{clashes} ahead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{clash}, accepted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{clash}, less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{clash}, more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count}. Left and right go through batches, up and down through clashes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{day}: {count} of {eggs}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{error} Here is the example instead.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{field}, stay {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{group}: {clashes}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{label}. Ctrl+Z takes it back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}, trial “{trial}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{new} in place of {old}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{number} birds in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{number} eggs in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{old} → {new}, {days} earlier</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{old} → {new}, {days} later</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{points} {unit}, by age in days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{taken} of {places} taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{tip}; beside these, {lived_with}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{what}: not possible</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{who} come on {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{who} comes on {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{who}, in {place} ({room})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{why}, ready {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>° north</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>“{name}” beside the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>• and {number} more</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
