"""Longer texts of the window: how to begin, keys, about."""

from quailsched.words import marked

HOW_TO_BEGIN = marked("""<h3>Your own farm in five steps</h3>
<ol>
<li><b>Farm › New farm</b> (Ctrl+N): a name and a file. Every change is saved at once; there is no Save.</li>
<li><b>Change › Add a place</b> (Ctrl+P): what holds your eggs, the brooder, the pen. Floor as width times length.</li>
<li><b>Change › Farm: name, units, nights</b>: the lows of your nights, so that cold moves show.</li>
<li><b>Change › Add a batch</b> (Ctrl+B): how many eggs, and when. The route through your places is filled in.</li>
<li>Look at what is red: pick it, read why, change the batch (Ctrl+E) or move it by a day (Alt+Left, Alt+Right).</li>
</ol>
<p>Ctrl+Z takes every step back, even tomorrow. What you see first is an example; change in it what you like.</p>""")

KEYS = marked("""<h3>Keys and mouse</h3>
<p><b>Left, Right</b> go through the batches, <b>Up, Down</b> or <b>F3</b> through the clashes.<br>
<b>Alt+Left, Alt+Right</b> move the picked batch by a day, with <b>Shift</b> by a week.<br>
<b>Ctrl+Shift+A</b> accepts the picked clash, if it is one to watch; <b>Return</b> says why, <b>Esc</b> leaves it.<br>
<b>Return</b> or a double click opens it, <b>Ctrl+E</b> too; <b>Ctrl+Del</b> removes it. <b>Esc</b> lets it go.<br>
<b>+</b> and <b>−</b> zoom, as does Ctrl and the wheel about the pointer; <b>Ctrl+0</b> fits the season.<br>
<b>Alt+1</b> to <b>Alt+5</b> show a week to three years; two fingers on a touchpad push the season along or zoom it.<br>
<b>Ctrl+F</b> finds a batch, a place or a day, <b>Ctrl+G</b> a day: 12 Apr, in 3 weeks, week 15, day 30 of Clover.<br>
In the strip with all days push the frame along, or pull at its edges; with keys, <b>Left, Right, + and −</b>.<br>
<b>F9</b> shows what is picked beside the season, or the season alone.<br>
<b>Home</b> goes to today, <b>Page Up</b> and <b>Page Down</b> through time, with <b>Shift</b> through the lanes;
drag the paper to push it along.<br>
<b>Ctrl+Shift+T</b> starts a trial, <b>Ctrl+Shift+C</b> compares it, <b>Ctrl+Shift+P</b> goes back to the plan.<br>
A filled red bar below a lane stops the plan, a broken outline is to be watched, a grey one is accepted.<br>
Drag a band to move its batch, its edge to leave a place earlier or later, or into another lane; up or down inside
its lane it splits. <b>Shift+F10</b> has all of that as a menu. <b>Shift</b> keeps to weeks, <b>Esc</b> lets go.<br>
<b>Ctrl+L</b> changes between lanes of places and of batches.<br>
Double click a place's name to change it. The Setup view has everything as tables.<br>
<b>Ctrl+2</b> shows today: <b>Space</b> ticks, <b>P, L, G</b> put off, leave out, give. <b>F8</b> takes a count.<br>
<b>Ctrl+R</b> records any count by a form, <b>Ctrl+Shift+R</b> lists all, to correct and take back.</p>""")

ABOUT = marked("""<h3>Quailsched {version}</h3>
<p>Plans a season of quail: which batches will want the same floor, and when to set the next eggs.</p>
<p>Its figures carry their sources; a plan is no promise. Heat lamps start fires, birds can carry Salmonella,
dust harms lungs, and killing is for those who are able and allowed. Local rules on keeping, processing and
selling come first. Ask a vet, not a program, about sick birds.</p>""")
