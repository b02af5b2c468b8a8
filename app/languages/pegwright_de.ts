<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Pegwright</name>
    <message>
        <source>&amp;Clear this list</source>
        <translation>Diese Liste &amp;leeren</translation>
    </message>
    <message>
        <source>&amp;Daylight</source>
        <translation>&amp;Tageslicht</translation>
    </message>
    <message>
        <source>&amp;Lamplight</source>
        <translation>&amp;Lampenlicht</translation>
    </message>
    <message>
        <source>&amp;Larger letters</source>
        <translation>&amp;Größere Buchstaben</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Smaller letters</source>
        <translation>&amp;Kleinere Buchstaben</translation>
    </message>
    <message>
        <source>, and mirrored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, to the drill's point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; string {other} comes too near as well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; strings {others} come too near as well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; the drawing was turned by {degrees:.1f} degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bare blank with nut and strings, the pencil in hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A blind bore has to leave wood at its bottom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A blind slot has to go below the post.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A board as large as the blank holds the inside openings; one shaped like the head guides the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A button behind the head needs room beyond its edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drill that enters at an angle slides off before it bites.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drill wanders along a glue line, and the joint is weakened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A field needs a path to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A flat plate on a curved edge rocks or bridges: cut a flat for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A flat runs along the edge under the plate; a round spot is cut with a Forstner bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A flat takes wood from the rail that carries the tuner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line that crosses itself encloses no head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A loop needs at least two nodes, so this one stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new node lies between the ends of its edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A path needs at least one segment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A picture is moved by finite numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A picture is shown between 0 and 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pin needs wood all round it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A place needs two finite numbers, x and y in mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plate wants wood under all of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A radius of {radius:g} mm does not fit at this corner: no radius fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A radius of {radius:g} mm does not fit at this corner: the largest that fits is {largest:.2f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rectangle has four corners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A ring under the router that rubs on the template while the cutter turns inside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rounding needs a radius above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A row takes at least two tuners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A row that runs across the centreline cannot be edited symmetrically.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A scale factor is a number above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sentence for yourself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sentence for yourself; it is printed in the part list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A side bore has to come through the rail into its slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A side bore starts at a mark on the square edge of the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A side is copied to the other side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slot needs a width above zero, got {width:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slot that crosses the outline leaves no rail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A string in a slot must not rub on the walls beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A string on its way to its post needs air past the others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A string that goes down into a slot must clear the edge it dives over, or get a ramp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tuner among these is placed by its row: free it from the row to set it out by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wall that crosses itself cannot be routed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A {operation} of {item} goes {deep} mm deep, to the drill's point; the drill is as long as {most} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A {operation} of {item} goes {deep} mm deep, to the drill's point; the quill travels {most} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A3 on its side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A3 upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4 on its side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4 upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Pegwright</source>
        <translation>Über Pegwright</translation>
    </message>
    <message>
        <source>Above 10 degrees a string tends to catch in the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above zero it lies outside the line, below zero inside. Corners that open become round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the axis: with its thickness it sweeps the room that fingers need.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a node</source>
        <translation>Punkt hinzufügen</translation>
    </message>
    <message>
        <source>All samples are invented. Margins and rates marked as common practice have no published source: set what you trust.</source>
        <translation>Alle Beispiele sind erfunden. Sicherheitsabstände und Zeiten, die als üblich gekennzeichnet sind, haben keine veröffentlichte Quelle: stelle ein, worauf du dich verlässt.</translation>
    </message>
    <message>
        <source>Along the axis that fingers turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along, to the tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An angle is a finite number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An arc cannot be pulled onto its own end: pull it farther out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An arc needs a radius above zero, got {radius:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An arc needs two different ends and a bulge that is not zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An edge at this corner has no length: remove its node first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An edge at this node has no length, so the node cannot be smooth: remove it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An edge is straight, an arc or a curve, not {kind}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An edge needs a length above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An open path cannot be placed: close the outline first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An open path has no area: close it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An open path has no inside: close it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An unevenly stretched arc is no arc: turn it into curves first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another rectangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apart across, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apart along, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As far as the table goes either way: bores that want more are told.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As long as the plate, and a little more for the chisel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>Aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a corner the edges meet at any angle; at a smooth node they go on in one direction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the nut the line runs too flat to be offset.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the beginning</source>
        <translation>Zurück zum Anfang</translation>
    </message>
    <message>
        <source>Back to: {name}</source>
        <translation>Zurück zu: {name}</translation>
    </message>
    <message>
        <source>Begin another layout beside this one.</source>
        <translation>Einen weiteren Entwurf neben diesem beginnen.</translation>
    </message>
    <message>
        <source>Bit and follower do not go together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bit does not enter the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bit does not reach through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore deeper than the wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore stops in the rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bores cross a glue line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bores share a tilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both edges at this node are arcs and cannot turn into line: make one of them a curve first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring into line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring to one height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Built on these libraries, each under its own licence:</source>
        <translation>Gebaut auf diesen Bibliotheken, jede unter ihrer eigenen Lizenz:</translation>
    </message>
    <message>
        <source>Button close to the wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buttons close together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance: being worked out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change to {names} there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes to this layout</source>
        <translation>Änderungen an diesem Entwurf</translation>
    </message>
    <message>
        <source>Choose a bit of the rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a bit of {width} mm or less, or make {opening} {b} mm wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a follower nearer the cutter's size, or make the tongue wider.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a longer bit or a thinner template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a smaller plate, or another place for the slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a smaller plate, or widen the outline there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another bit or follower, or another thickness of template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another bit or guide bush.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one loop as the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose smaller buttons, or move both tuners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose smaller plates, or move both tuners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close every window; unsaved work is asked about in each.</source>
        <translation>Alle Fenster schließen; in jedem wird nach Ungespeichertem gefragt.</translation>
    </message>
    <message>
        <source>Close t&amp;he window</source>
        <translation>Fenster &amp;schließen</translation>
    </message>
    <message>
        <source>Close this layout; unsaved work is asked about.</source>
        <translation>Diesen Entwurf schließen; nach Ungespeichertem wird gefragt.</translation>
    </message>
    <message>
        <source>Copy bass to treble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the versions</source>
        <translation>Versionen kopieren</translation>
    </message>
    <message>
        <source>Copy treble to bass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corners tighter than the cutter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a flat {rock} mm deep for it, or slide it to where the edge is straighter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut it {needed} mm larger.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut the flat {needed} mm shallower, or make {opening} narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut {n} things</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark colours; the same key goes back to the light ones.</source>
        <translation>Dunkle Farben; dieselbe Taste führt zu den hellen zurück.</translation>
    </message>
    <message>
        <source>Deep enough that the plate lies on wood from end to end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deeper than the drill is long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deeper than the quill travels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth at the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth of the flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down, to the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw it yourself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the outline again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill it through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill it {amount} mm less deep, or move {opening} {amount} mm away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill it {lacking} mm deeper, or move {own} that much nearer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill it {lacking} mm deeper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill it {needed} mm less deep, choose shorter hardware, or reshape the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill it {needed} mm less deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill point scars the inner wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill the {bores} of all {pattern} {by} deeper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill the {bores} of all {pattern} {by} less deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill would skate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill {what} {by} deeper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill {what} {by} less deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear {id} belongs to the blank and is not copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier changes are kept no longer</source>
        <translation>Frühere Änderungen werden nicht mehr aufbewahrt</translation>
    </message>
    <message>
        <source>Ears are glued before anything crosses the glue line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge to the next node</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter a longer drill in the rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the drill in the rack, or change the hardware pattern to one you have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equal centres put thick and thin strings at even steps; equal gaps leave even room between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Features are aligned along x or y, not {axis}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer than two locating pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fingers need room between the buttons as they turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First handle, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First handle, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flat of {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flat too small for its plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forward to: {name}</source>
        <translation>Vor zu: {name}</translation>
    </message>
    <message>
        <source>From an imported drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From face to back, planed. Side bores lie at half of it unless they say otherwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From nut to bridge. The pull of the strings is reckoned with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From one post of the row to the next: all move together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the face down to the axis of the bore; left empty it is half the thickness.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the face down; left empty the slot goes through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the outline square in to the posts of the row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the plate to the hole that the string goes through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the plate to the post's end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the post's axis along the edge, towards the tip of the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the post's axis to the middle of the button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the post's axis towards the back of the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the post's axis towards the button, seen on the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the surface that it starts from, to full diameter; through when left empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the surface that it starts from; left empty it goes through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From wall to wall. The bit has to pass, and the string hole has to lie between the walls.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From wall to wall; left empty the ramp is as wide as its slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {opening} a ramp {ramp_words}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {tuner} a string nearer its side, or move it farther from the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glue line through a hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glue on {ear} before these are drilled, and let the glue cure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have two pins proposed: they are set mirrored about the centreline; or choose bits that get through from the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Headstock layout</source>
        <translation>Entwurf einer Kopfplatte</translation>
    </message>
    <message>
        <source>Headstock layouts</source>
        <translation>Entwürfe für Kopfplatten</translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold a node first (K): the new one comes into the edge after it.</source>
        <translation>Erst einen Punkt halten (K): der neue kommt in die Kante danach.</translation>
    </message>
    <message>
        <source>Hold at least {n} things first: press with Shift, or pull a frame round them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold the outline or a drawn slot first: then K leads from node to node.</source>
        <translation>Erst den Umriss oder einen gezeichneten Schlitz halten: dann führt K von Punkt zu Punkt.</translation>
    </message>
    <message>
        <source>Hold the outline or a slot first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold tuners, slots, pins or holes first: these can be copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hole meets a ramp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>How deep the ramp lies where it meets the slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far before the slot the ramp begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far it reaches; deeper than that it cannot work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the bit can be lowered; deeper needs another depth of the collet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the button's axis lies from the back, or from the edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the head leans back from the line of the neck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the plate reaches from the post's axis away from the button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the plate reaches from the post's axis towards the button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the router's base has to rest on the board at the rim of an opening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the spindle comes down in one go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the square bass edge lies from the centreline: bores through the side are marked and measured from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the square treble edge lies from the centreline: bores through the side are marked and measured from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How tall the ring is: so much of it can rub.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job book</source>
        <translation>Werkbuch</translation>
    </message>
    <message>
        <source>Keep the table set and turn the blank over about the centreline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a slot across its way, or slide {item} to where a slot lies ahead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead it over its own post, give it another post, or set one of the two axes deeper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead it past the other side of its own post, or give it another post.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least board that is to stay between two openings of the template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least wood between a drilling and a slot's wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least wood between a drilling and the edge of the finished head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least wood between a drilling and the slope at the nut end of a slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least wood between two drillings, measured in space between the real cylinders.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the blank {by} mm longer at the {end} end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the line, add a slot beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length before the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length, or width of the spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lengthen {slot} by {by} at its {end} end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter on its side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters at {percent} % of the desktop's.</source>
        <translation>Buchstaben mit {percent} % der Größe des Arbeitsplatzes.</translation>
    </message>
    <message>
        <source>Letters of this size, in every window.</source>
        <translation>Buchstaben dieser Größe, in jedem Fenster.</translation>
    </message>
    <message>
        <source>Libraries</source>
        <translation>Bibliotheken</translation>
    </message>
    <message>
        <source>Library</source>
        <translation>Bibliothek</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <source>Light colours.</source>
        <translation>Helle Farben.</translation>
    </message>
    <message>
        <source>Light or dark as the desktop is, also when that changes.</source>
        <translation>Hell oder dunkel, wie der Arbeitsplatz es ist, auch wenn das wechselt.</translation>
    </message>
    <message>
        <source>Little wood above or below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locating pin near the blank's edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made for the bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a deep centre mark, use a guide block, or start with a short stiff drill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a row along the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a row on a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a wedge for the rest of the angle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make one of them narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the blank {by} larger at the {end}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the blank {by} mm larger at the {side}, or glue on an ear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the blank {by} mm larger at the {side}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the ramp of {slot} shorter, narrower or less deep there, or move one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {ear} {measured} mm wider or narrower, or move {item} as much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {opening} narrower or shorter, or widen the outline there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {what} {by} narrower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {what} {by} wider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {what} {ramp_words}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured across the cutting edges.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend the shape it depends on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move both, or choose smaller hardware.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move that wall of {opening} {needed} mm away, or give string {string} a post more in line with its place at the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the inner wall of {own} {lacking} mm away, or bear the post's tip: drill {length} mm deeper into the wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the line itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the nodes beside that place apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move them apart, or join them into one drawn slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {item} {needed} mm nearer the edge, or choose a longer shaft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {opening} inwards, or make it shorter or narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {opening} {amount} mm away from {item}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {own} {lacking} mm inwards, or choose a post with its hole {lacking} mm nearer the seat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {own} {lacking} mm outwards, or choose a post with its hole {lacking} mm deeper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {what} {ways}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ew window</source>
        <translation>N&amp;eues Fenster</translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bit chosen for the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bit is chosen for the template, so its size is unknown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bore of the {side} edge meets the square edge of the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closed edge runs round this place: press inside the head, and see that all of it is in the picture and differs from what is behind it; or shift the level of grey.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closed loop is the outline: the drawing has none, or its ends do not meet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No mark on the square edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No picture lies behind the drawing: lay one there first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No place for a feature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No single move does it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No single move does it: {names} stand in the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No single move does it: {names} stands in the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No single move is known that cures this snag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No slot in the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No straight edge at the end could be the nut line: the lowest point and the middle of the outline were taken{turned}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No such drill in the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Node</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved there</source>
        <translation>Nicht dort gespeichert</translation>
    </message>
    <message>
        <source>Nothing is held.</source>
        <translation>Nichts wird gehalten.</translation>
    </message>
    <message>
        <source>Nothing would be left of the slot: it is narrower than twice this distance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Noch nichts</translation>
    </message>
    <message>
        <source>Nut and strings</source>
        <translation>Sattel und Saiten</translation>
    </message>
    <message>
        <source>Of the arc from this node to the next; both nodes stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the board: the follower has to reach it at every depth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the cone at the tip, edge to edge; 118 degrees is usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the cutting edges, measured with a caliper across their tips.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the drill that makes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the drill. Measure the part with a caliper and add what it needs to slide in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the edge from this node to the next; the next node moves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the nut itself, edge to edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the part that rubs on the template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the pin itself: it has to fit without play.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the plate that rests on the work or the template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the ring that rubs on the template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of this string alone, where frets are fanned; left empty it is the one of all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset of the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On macOS the bundled program brings its launcher and opens layouts itself; see DEVELOPERS.md for how it is made.</source>
        <translation>Auf macOS bringt das gebündelte Programm seinen Starter mit und öffnet Entwürfe selbst; wie es gemacht wird, steht in DEVELOPERS.md.</translation>
    </message>
    <message>
        <source>On the same template {names} does it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One name for one thing; cards, notes and the running order use it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a closed path can become a loop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a side tuner of its own has a depth; free {id} from its row first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a layout beside this one.</source>
        <translation>Einen Entwurf neben diesem öffnen.</translation>
    </message>
    <message>
        <source>Open a layout in a window of its own</source>
        <translation>Einen Entwurf in einem eigenen Fenster öffnen</translation>
    </message>
    <message>
        <source>Open in a new win&amp;dow…</source>
        <translation>In neuem &amp;Fenster öffnen…</translation>
    </message>
    <message>
        <source>Opposite bores need one table setting; the blank is turned over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out, to the button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outline crosses itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outline leaves the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside, windings included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pare it by hand, or choose a slimmer bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste {n} things</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pattern {pattern} has a bore from the side without a depth {place}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pattern {pattern} mounts through the face, so its bores start at the face or the back, not at a seat {place}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pattern {pattern} mounts through the side, so its bores start at the seat, not at the {surface} {place}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pegwright speaks the chosen language when it is started again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins not mirrored for a template that turns over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan the holes, slots and templates of a guitar headstock</source>
        <translation>Löcher, Schlitze und Schablonen einer Kopfplatte planen</translation>
    </message>
    <message>
        <source>Plans the holes, slots and templates of a guitar headstock, for makers in small shops.</source>
        <translation>Plant Löcher, Schlitze und Schablonen einer Kopfplatte, für Gitarrenbauer in kleinen Werkstätten.</translation>
    </message>
    <message>
        <source>Plate over a slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate overhangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate rocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plates overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Post bore does not come through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Post close to the slot's end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Post end close to the inner wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Post is longer than its bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press where the outline leaves the nut line, then node after node: the bass side follows. Keys s, a, t and c choose straight, arc, tangent arc and curve; type lengths and angles, Tab between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurückgelegt</translation>
    </message>
    <message>
        <source>Qt and PySide6 are used under the GNU Lesser General Public License, version 3: they may be replaced by other builds of the same version. Their source text is at {place}. GEOS, inside shapely, is under the same licence, version 2.1; its source text is at {other}.</source>
        <translation>Qt und PySide6 werden unter der GNU Lesser General Public License, Version 3, verwendet: sie dürfen durch andere Ausgaben derselben Version ersetzt werden. Ihr Quelltext liegt unter {place}. GEOS, in shapely enthalten, steht unter derselben Lizenz, Version 2.1; sein Quelltext liegt unter {other}.</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rail is thin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rail is thin behind a flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the table and drill on in a second travel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ramp of {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reshape the outline, or choose other hardware.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reshape {opening}, or choose other hardware.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout {slot} {by} mm deeper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout {what} {by} deeper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout {what} {by} less deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row stands in from the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second handle, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second handle, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the axis of {item} {by} mm deeper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the axis of {item} {by} mm higher.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the axis of {what} {by} deeper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the axis of {what} {by} higher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the axis {by} mm deeper, or choose a narrower plate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the axis {by} mm higher, or choose a narrower plate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set these two farther apart in the pattern {pattern}, or choose hardware with room between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set two pins on the centreline, as far apart as the wood allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorten {slot} by {by} at its {end} end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side tuner {id} cannot be brought to {axis} = {value:g} mm on its edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side tuners sit on an edge, so their row follows the edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side tuners sit on an edge, so they are spread along it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide {item} to where the outline runs along the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide {item} {by} mm to the {end}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide {item} {lacking} mm to the {end}, or lengthen {own} by that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide {tuner} {by} to the nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide {tuner} {by} to the tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot close to the nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot crosses itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot leaves the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot too shallow for the post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot {id} is drawn freely: it has no ends and no width, only nodes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot {id} is {width:g} mm wide, so it cannot be shorter than that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot {ref}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot {ref} has straight walls and no nodes: turn it into a drawn slot first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slots overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spacing of the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread along the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread on a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start {opening} {needed} mm nearer the tip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start {opening} {needed} mm nearer to the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop {measured} mm earlier, or use a drill with a shorter point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight, an arc of one radius, or a curve that its two handles pull.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String bends sideways at the nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String beside the slot's wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String hole outside the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String over the ramp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String over the slot's nut end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String rubs on another post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String winds on the slot's floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string} leaves the nut {angle:.1f} degrees sideways to {tuner}; up to {tolerable:g} is tolerable.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} cuts {measured} mm into the wall of {opening}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} passes {a} mm from the post of {item}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} passes {a} mm from the wall of {opening}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} runs {measured} mm into the post of {item}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string} passes {a} mm over {what}; {b} mm wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string} runs {measured} mm through {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string} winds {a} mm above the floor of {opening}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string} winds {measured} mm into the floor of {opening}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Template cannot hold the shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Template does not guide the bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That set has {chosen} strings, the layout has {strings}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The arrow keys go back to a step or forward to one; Home is the beginning.</source>
        <translation>Die Pfeiltasten gehen zu einem Schritt zurück oder vor; Pos1 ist der Anfang.</translation>
    </message>
    <message>
        <source>The axis of {item} never meets the {side} square edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The beginning</source>
        <translation>Der Anfang</translation>
    </message>
    <message>
        <source>The blank has to hold the whole outline and more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The blank is only {a} mm larger than the outline at the {side}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The button of {item} clears the edge by {a} mm; {b} mm is wanted for the fingers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The button of {item} lies {measured} mm behind the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The button of {item} reaches {measured} mm behind the wood and cannot turn there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The buttons of {one} and {two} pass {a} mm apart; {b} mm wanted for the fingers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The buttons of {one} and {two} strike each other by {measured} mm as they turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cutter has to pass through its guide bush.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cutter leaves wood in corners to be pared by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dimensions that this tuner has. Change them on the Tuners stage while nothing is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drill does not reach the bottom of the hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drill for {item} enters the square edge at {tilt:.1f} degrees and would skate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drill press has to be reset during the hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drill's point for {item} goes {measured} mm into the inner wall of {own}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drill's point runs ahead of its full diameter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge begins and ends on one point, so it makes no arc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge begins and ends on one point, so its length has no direction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge ends before {of} has slid so far.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge that the bore starts from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge that the piece is glued to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge under the plate of {id} is straight: it needs no flat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edges fold back on themselves here, so no arc fits between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edges meet without a corner here, so there is nothing to round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ends of the nut lie on one another: put them at either side of the neck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The entry that is chosen</source>
        <translation>Der gewählte Eintrag</translation>
    </message>
    <message>
        <source>The face lies between the sheet and the camera.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first and the last tuner stand on one place: move them apart before making a row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flat for {item} cuts into {opening}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flat for {item} is {a} mm, too small for its plate, which takes {b} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The follower has to rub on the template at every depth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The follower rides over wood thinner than it can follow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The four corners do not run round a rectangle: put them in order, one at each corner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The glue line of {ear} is crossed by the bores of {crossing}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The glue line of {ear} runs {measured} mm inside the {name}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle that pulls the curve as it comes to the next node, from the centreline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle that pulls the curve as it comes to the next node, from the nut line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle that pulls the curve as it leaves this node, from the centreline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle that pulls the curve as it leaves this node, from the nut line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hardware {id} needs at least one bore.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hole of locating pin {item} leaves the blank by {measured} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hole of locating pin {item} leaves {a} mm of wood to the edge of the blank; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hole that the cutter passes through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The id {id} is used more than once among the {where}: give each its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job book times {operation} of the {piece} piece more than once: keep one (at $.book.times).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kind decides how far its point runs ahead of the full diameter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kind of drill decides how far its point runs ahead of the full diameter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout has no feature named {id}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout has no field {words}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout has no hardware named {id}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout has no hardware pattern named {id}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout has no row named {row}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout has no slot named {ref}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout has no {words}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line is too narrow or turns too tightly for this distance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line must cross the centreline at two levels before one side can be mirrored.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line turns more tightly than this distance: choose a smaller one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loop has no length: all its nodes lie on one point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loop has {nodes} nodes, so there is no node {index}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark for {item} lies {a} mm from the {end} end of the blank; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark for {item} misses the square edge by {measured} mm at the {end} end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark lies on the corner that it was next to; with Alt it stays where you let go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name {new} is kept for the {new} itself: choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name {value} is taken: choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next larger letters, up to twice as large.</source>
        <translation>Die nächstgrößeren Buchstaben, bis zur doppelten Größe.</translation>
    </message>
    <message>
        <source>The next smaller letters.</source>
        <translation>Die nächstkleineren Buchstaben.</translation>
    </message>
    <message>
        <source>The nodes are {apart:.2f} mm apart, so the radius must be {half:.2f} mm or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The note it sounds, as C4 or F#3: with diameter and scale length it gives the pull.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline cannot be used: {error}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline crosses itself at {x:.1f} across, {y:.1f} along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline crosses itself at {x}, {y}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline crosses itself near ({x:.1f}, {y:.1f}) mm: mend the drawing first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline has no edge between the nut line and the tip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline has no height, so it has no edges to put tuners on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline leaves the blank by {measured} mm at the {side}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline measures {width:.0f} x {height:.0f} mm, far more than a headstock: give the right unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The owners have not chosen a licence yet: all rights reserved.</source>
        <translation>Die Eigentümer haben noch keine Lizenz gewählt: alle Rechte vorbehalten.</translation>
    </message>
    <message>
        <source>The part that the collet grips. Without a bearing it may rub on the template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The path is broken at ({x:.3f}, {y:.3f}): the next segment starts {distance:.3f} mm away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture behind the drawing cannot be laid where it should: {error} (at $.picture.place).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture is locked: unlock it on the Outline stage to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>The plate of {item} bridges the curved edge by {rock} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate of {item} lies {a} mm from the outline; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate of {item} lies {a} mm from the {side}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate of {item} overhangs the outline by {measured} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate of {item} reaches {depth} mm over {opening}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate of {item} rocks on the curved edge by {rock} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate of {item} runs {measured} mm past the {end} end of the edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate of {item} stands {measured} mm over the {side}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plates of {one} and {two} lie {a} mm apart; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plates of {one} and {two} overlap by {measured} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The post bore of {item} leaves {above} mm of wood in the post's way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The post has to pass from the back to the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The post has to turn free of the slot's inner wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The post of a side tuner has to lie across a slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The post of {item} ends {a} mm before the inner wall of {own}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The post of {item} is {lacking} mm longer than its bore, which ends in wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The post of {item} lies {a} mm from the end of {own}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The post of {item} runs {measured} mm into the inner wall of {own}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The post of {item} runs {room} mm into the end of {own}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price of {part} is not an amount of money: write for example 12.50 (at $.book.prices[{i}].each).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The proposed line crosses itself: allow less deviation, or choose a cleaner picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack holds no drill of this diameter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack holds no {diameter} mm drill for {named}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack holds nothing named {id}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rail beside {opening} is {a} mm; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rail between the flat for {item} and {opening} is {a} mm; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rail is the wood between a slot and the outline; it carries the tuners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ramp has to lie deeper than the strings that it leads down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rectangle needs a width and a height above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The seat of {item} lies {waste} mm outside the square edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shapes of the layout leave this feature nowhere to be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The side bore of {item} ends {lacking} mm before {own}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The side bore of {item} meets no slot at its height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The slot has to be as wide as the cutter everywhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The slot has to be finished from the other side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step in words</source>
        <translation>Der Arbeitsgang in Worten</translation>
    </message>
    <message>
        <source>The straight edge of {width:.1f} mm at one end was taken for the nut line and its middle for the centreline{turned}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The string hole of {item} lies {a} mm from the {wall} of {own}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The string hole of {item} lies {measured} mm inside the {wall} of {own}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The string needs room on both sides of the post.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The string reaches the hole in the post through the slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The string that is wound on this post.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strings of {id} clear its nut end: it needs no ramp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface that the drill enters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table of the drill press does not tilt that far.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template cannot hold a tongue of wood in {opening}: {lost} mm2 of it would be cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template is larger or smaller than the cut by the offset of this bit and its follower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template names the bit {bit}, which is not in the rack (at $.template.bit).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template names the guide bush {bush}, which is not in the rack (at $.template.bush).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template turns over for {turned}, but {worst} misses its mirror image by {a} mm, so the cut from the back would not meet the cut from the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thin way of the button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thing held first stays when the others come to it. In a row one spacing holds for all; spread, each can be moved alone again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tolerance is a length above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two points lie on one another: move them apart, the farther the better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two points need a distance above zero between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The versions are on the clipboard.</source>
        <translation>Die Versionen sind in der Zwischenablage.</translation>
    </message>
    <message>
        <source>The wall of {opening} crosses itself at {x}, {y}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way along an edge is a finite number of mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The web between {one} and {two} is {a} mm; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The web is the wood between two slots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The windings need air below the post.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood between nut and slot carries the pull of the strings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood is too thin: it takes {least} mm for this bore.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The words hold half a character, which no file can keep: type them again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {cutter} mm bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {cutter} mm cutter does not enter {opening}, which is {a} mm wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {cutter} mm cutter does not pass the neck of {opening}, which is {a} mm wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {keep} half strays over the centreline, so it cannot be mirrored: move its nodes to their own side first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no locating pins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no snags.</source>
        <translation>Es gibt keine Haken.</translation>
    </message>
    <message>
        <source>There is a node at this place already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no snag.</source>
        <translation>Es gibt keinen Haken.</translation>
    </message>
    <message>
        <source>There is no tuner named {tuner}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing named {old} in {group}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing on the {source} side to copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to paste: copy tuners, slots, pins or holes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to rename in {group}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is only one locating pin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These four corners fix no plane: move them apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These tuners lie along both edges: choose those of one side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This edge has no length, so it cannot be bent: move its node instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This edge has no length: remove one of its nodes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This edge is all corners: choose a cleaner picture or another level of grey.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This edge is no curve, so it has no handles: make it a curve first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This edge is too small to be an outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file was not opened</source>
        <translation>Diese Datei wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>This map flattens the picture to a line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This piece of the path has no length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This point of the picture lies on the horizon: choose one nearer the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This would flatten or mirror the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This would leave a loop without area.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three of the corners lie on one line, or two on one another: move them apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three points on a straight line make no arc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt beyond the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To spread tuners evenly takes at least three of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the left of the way from post to button, seen on the face; to the right below zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {id} does not follow an edge, so it cannot slide along one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {id} is in no row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {id} is placed by its row: free it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {id} mounts through the face, so it has no mark on the square edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {id} mounts through the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {id} mounts through the side, so it stands square to its edge and has no turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {id} takes its turn from its row: free it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {tuner} is spaced by its row already: free it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {tuner} mounts through the face, so its place is a point or a row {place}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {tuner} mounts through the side, so its place is on an edge {place}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {tuner} mounts through the side, so its row must follow an edge with inset 0 {place}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {tuner} names the pattern {pattern}, which the layout does not have {place}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {tuner} names the string {string}, which the layout does not have (at $.tuners[{i}].string).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuner {tuner} stands in the row {row}, which the layout does not have {place}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuners through the face and through the side cannot share a row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the template over on its pins and finish from the back, or choose a longer bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the template over on its pins, or choose another thickness of template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned over, the template comes back to its place only on pins that are each other's mirror image.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two bring the template back to the same place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two pins bring the template back to the same place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two plates cannot lie in one place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two slots share wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a length, for example 12.5, 12 mm or 1/2".</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type how far the copy lies from the line, above or below zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a slimmer pin or a larger blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Version</translation>
    </message>
    <message>
        <source>Versions of the program, its libraries and this machine, for a report of a fault.</source>
        <translation>Versionen des Programms, seiner Bibliotheken und dieses Rechners, für die Meldung eines Fehlers.</translation>
    </message>
    <message>
        <source>Web is thin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is held, or the stage</source>
        <translation>Was gehalten wird, oder der Schritt</translation>
    </message>
    <message>
        <source>What one such step takes you, in minutes; s and h behind the number are understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the bore is for: it decides which margins it keeps and when it is drilled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the layout is called, on its sheets and in its file's name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the readings say</source>
        <translation>Was die Messungen sagen</translation>
    </message>
    <message>
        <source>What you call it; plans and cards use this name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel zooms, the middle button or Space shoves. A mark that is let go of near a corner goes onto it, with Alt it stays. Page up and down take the next mark, arrow keys move it (Shift farther, Alt finer).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where a string leaves the nut, above the face; it decides the break angle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the bore ends in wood, the post cannot go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the glued piece begins, from the nut line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the glued piece ends, from the nut line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the string winds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widen the blank, or glue on an ear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the plate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Windows knows a file by what follows the last dot of its name, so layouts (.headstock.json) cannot be given to Pegwright alone: make a shortcut to the program, and drop layouts on it or on its window.</source>
        <translation>Windows erkennt eine Datei an dem, was nach dem letzten Punkt ihres Namens steht, darum können Entwürfe (.headstock.json) nicht allein Pegwright zugeordnet werden: lege eine Verknüpfung zum Programm an und lass Entwürfe auf sie oder auf sein Fenster fallen.</translation>
    </message>
    <message>
        <source>Without a bit the template has no size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood behind the nut line that the drawing shows: pins and clamps may stand there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood between a bore from the side and the face or the back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood from the nut line to the far end of the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood left standing under a plate keeps it from sitting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write that template too, for {names}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your choice {names} does it on another template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>wie es war</translation>
    </message>
    <message>
        <source>as saved</source>
        <translation>wie gespeichert</translation>
    </message>
    <message>
        <source>back</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bass</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bass edge</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centreline</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance bore</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance bores</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counterbore</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counterbores</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ears</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>face</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>features (ears, slots, tuners, pins, holes)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hole</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holes</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inner wall</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its horizon runs through it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>locating pin</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>locating pin hole</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said in its record</source>
        <translation>in den Angaben nicht genannt</translation>
    </message>
    <message>
        <source>nut</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nut end</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nut line</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outline</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>patterns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>patterns</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pin hole</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pin holes</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pins</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>post bore</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>post bores</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>practice</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rail</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ramp of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>real</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>routes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rows</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saved</source>
        <translation>gespeichert</translation>
    </message>
    <message>
        <source>screw</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw holes</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw pilot</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seat</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shown now</source>
        <translation>jetzt gezeigt</translation>
    </message>
    <message>
        <source>side bore</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slots</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps of the running order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the nut end of {opening}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ramp of {opening}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tip</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tip end</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>treble</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>treble edge</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tuners</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undone</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>wall of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was not there</source>
        <translation>war nicht da</translation>
    </message>
    <message>
        <source>written</source>
        <translation>geschrieben</translation>
    </message>
    <message>
        <source>{across} to the bass side, {along} from the nut line.</source>
        <translation>{across} zur Bassseite, {along} vom Sattel.</translation>
    </message>
    <message>
        <source>{across} to the treble side, {along} from the nut line.</source>
        <translation>{across} zur Diskantseite, {along} vom Sattel.</translation>
    </message>
    <message>
        <source>{at} keeps {area} mm2 of wood in corners tighter than the {cutter} mm cutter, up to {depth} mm deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bits} then {bit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} does not do {opening}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} does {opening} only from both sides: it is not guided at every depth from the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} reaches {a} of {b} mm in {opening}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{by} to the bass side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{by} to the nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{by} to the tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{by} to the treble side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{called} breaks out of the outline by {measured} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{called} breaks out of the outline by {measured} mm; {needed} mm of wood wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{called} comes within {a} mm of the outline beyond its own mouth; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{called} is cut by the outline: put it at least {needed} mm inside or outside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{called} leaves {a} mm of wood to the outline; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{called} lies outside the outline, {inside} mm from it to the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{feature} has no place: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{grade}: {kind}. {sentence}</source>
        <translation>{grade}: {kind}. {sentence}</translation>
    </message>
    <message>
        <source>{head} begins with a letter or a digit and holds only letters, digits, spaces and _ . - signs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{head} is too long or too short: {message}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{head} must be a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{head} must be a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{head} must be above {number}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{head} must be at least {number}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{head} must be at most {number}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{head} must be below {number}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{head} must be words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{head} must be yes or no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ids} share a tilt of {level} degrees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{id} does not sit on the edge, so there is no flat to cut for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{id} has no single point to align.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{id} is no slot, so it has no ramp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{id} is no slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{id} is no tuner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{item} needs a tilt of {tilt:.1f} degrees; the table goes to {most:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{length} mm long and {depth} mm deep ({angle:.1f} degrees)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{move}, out of its row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{move}; room beside {names} then gets tight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{names} and {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} breaks through the {side} by {measured} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} comes out of the {side} by {measured} mm{to_point}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is open in another window. Close it there first, or save this one under another name.</source>
        <translation>{name} ist in einem anderen Fenster offen. Dort erst schließen, oder diesen unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>{name} is open in this window already.</source>
        <translation>{name} ist in diesem Fenster schon offen.</translation>
    </message>
    <message>
        <source>{name} leaves {a} mm of wood to the {side}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} leaves {a} mm of wood to the {side}{to_point}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} – not there now</source>
        <translation>{name} – zurzeit nicht da</translation>
    </message>
    <message>
        <source>{n} file changed.</source>
        <translation>{n} Datei geändert.</translation>
    </message>
    <message>
        <source>{n} file was left: drop drawings and pictures one at a time.</source>
        <translation>{n} Datei blieb übrig: Zeichnungen und Bilder einzeln fallen lassen.</translation>
    </message>
    <message>
        <source>{n} files changed.</source>
        <translation>{n} Dateien geändert.</translation>
    </message>
    <message>
        <source>{n} files were left: drop drawings and pictures one at a time.</source>
        <translation>{n} Dateien blieben übrig: Zeichnungen und Bilder einzeln fallen lassen.</translation>
    </message>
    <message>
        <source>{n} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} snag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} snags.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} thing copied: Ctrl+V hangs it at the pointer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} things are held: {names}.</source>
        <translation>{n} Dinge werden gehalten: {names}.</translation>
    </message>
    <message>
        <source>{n} things copied: Ctrl+V hangs them at the pointer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} things held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{of} cannot become that short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{of} has no ends: its wall is drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} and {two}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} and {two} overlap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} close to the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} cuts {measured} mm into the {two}; {needed} mm of wood wanted between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} meets another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} meets slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} meets {two}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} passes {a} mm from the {two}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} touches the {two}; {needed} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{opening} ends {a} mm before the nut line; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{opening} leaves the head by {measured} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{opening} runs {measured} mm past the nut line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{own} leaves {a} mm below the post of {item}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} %</source>
        <translation>{percent} %</translation>
    </message>
    <message>
        <source>{sort} of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} divides by zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is far too long for a headstock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not a length: write for example 12.5, 12 mm, 1/2" or 1 5/8" + 2 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not an angle: write degrees, for example 14.5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{user} uses the hardware {id}: give its tuners other hardware first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
