<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Pegwright</name>
    <message>
        <source> Stop at the nut line: the neck goes on behind it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> The one before it is in {before}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>"{one}" must come before "{two}" ({reason})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>"{text}" is no time that work can take: type minutes above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>"{text}" is no time: type minutes, for example 4 or 1.5 h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>"{text}" is not a number of turns a minute: write for example 16000.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>"{word}" is not understood here: use {words} or {last}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Actions and words…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Chances on the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Clear this list</source>
        <translation>Diese Liste &amp;leeren</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy treble to bass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Correct a printer…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Daylight</source>
        <translation>&amp;Tageslicht</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fainter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import a drawing…</source>
        <translation type="unfinished"></translation>
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
        <source>&amp;Layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Left-handed mirror</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Move it by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next thing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Offset…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print the sheets…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Row on a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Safety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Smaller letters</source>
        <translation>&amp;Kleinere Buchstaben</translation>
    </message>
    <message>
        <source>&amp;Solid beside the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Spread on a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Trace the picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Whole headstock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write the sheets…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(a step of the drawing: entries of the book have a button of their own)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(and {n} more)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>({depth} from the seat)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, and mirrored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, in a corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, in the corners only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, in two bores to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, layer {layer}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, one in a bore to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, or </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, planned {length}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, plug the pin hole {pins}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, plug the pin holes {pins}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, the back paper to centreline and nut line squared round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, the last in the corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, then </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, to the drill's point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, too fast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, turned over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, turned over once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, {depth} below the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, {depth} to pare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, {n} flip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, {n} flips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, {n} of them waste holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, {spacing} from centre to centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--unit {name} makes it {sized}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 in {n:,}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1. Its size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2. Its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3-D faces</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; it is the {operation} of {of} too</source>
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
        <source>; the plans need {n}, with offsets of {offsets}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A CSV file that a spreadsheet opens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bare blank with nut and strings, the pencil in hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bare shank on the wall burns it when it stands still: keep it moving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A blank {thickness:g} mm thick is too thin for {words}: it takes {thin:g} mm.</source>
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
        <source>A closed line crosses itself at ({x:.2f}, {y:.2f}); it was taken apart there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cost needs a word for what was paid for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A currency is a word of at most 12 letters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A distance is between two different holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drawing, a picture or a layout may also be dropped here.</source>
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
        <source>A fault in Pegwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fault of the program came again; your layout is kept.</source>
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
        <source>A head {thickness:g} mm thick is too much for {words}: {most:g} mm is the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hole or slot that ends inside the wood; the opposite of through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hole that a drill makes, given by where its axis enters, its direction, its diameter and its depth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A layout from a few numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lens bends straight lines most near the rim, so keep the head in the middle and the camera far away. Sheet or ruler must lie as high as the face: 16 mm lower, seen from 800 mm, makes the head 2 % too large. A camera that is 5 degrees off the square costs 0.4 % with two points, nothing with four corners. Check what you print with the 100 mm bar and the head itself with a rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line that crosses itself encloses no head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A locked picture is not moved by the hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A loop needs at least two nodes, so this one stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A model with your own figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A model with your own figures for the shop, set in the Blank stage: it knows nothing of slips, knots or a slipping vice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new headstock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new layout around this outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new node in the edge after the node that is held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new node lies between the ends of its edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A note has at most {most:,} letters: this one has {n:,}. Write it in two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A note needs some words; strike it out instead when there is nothing to say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A note such as E2 or F#3: with it the pull is worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number of parts is between 0 and {most:,}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A nut {nut_width:g} mm wide is more than a hand spans: {most:g} mm is the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pass may take only {step}, so it would need more than {most_passes} passes: take a wider cutter or longer cutting edges.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A path needs at least one segment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A path of the SVG file has more than {most_path_text} characters: simplify it in the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A photo or scan behind the drawing, to trace or to draw over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A photo or scan to trace</source>
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
        <source>A piece glued to the side of the blank to make it wide enough. Its glue line should cross no hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pin needs wood all round it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pin through template and blank that brings the template back to the same place, also after the blank is turned over.</source>
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
        <source>A press where the pen stands; a section line and a picture are pulled from one Space to the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A quarter turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A radius is above zero.</source>
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
        <source>A ramp that frees the strings of {slot} would be as deep as the slot: start the slot nearer to the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A ramp that frees the strings of {slot} would begin {nut_air:g} mm or less from the nut: raise the nut, or start the slot nearer to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading of {reading:g} cannot be: no headstock is longer than {farthest:,.0f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rectangle has four corners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rectangle of known size: sheet, ruler, template</source>
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
        <source>A side has no {count} tuners: give 0 or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A side is copied to the other side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A simulation needs at least 2 trials, got {trials}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A simulation takes 2 to {most:,} trials, not {trials:,}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slot needs a width above zero, got {width:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slot needs a width above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slot that crosses the outline leaves no rail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slot {wide} wide would let {bit} in, {done}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A spline has neither control points nor fit points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A spline has {knots} knots where {need} belong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A spline of degree {p} needs at least {p2} control points, got {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A spline of degree {p} with {count} control points needs {count2} knots, got {knots}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A spline with {count} control points has {weights} weights.</source>
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
        <source>A template {thick} thick would let {bit} do it, {done}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tuner among these is placed by its row: free it from the row to set it out by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tuner is mounted through the face or the side, or the two are mixed; not {mount!r}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wall that crosses itself cannot be routed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wanted chance lies between 0 and 1, got {chance:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wider, shallower hole on the axis of another, for a bushing or a screw's head. It is drilled first: the drill's spur needs wood at the centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A {bit}</source>
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
        <source>A&amp;bout Pegwright</source>
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
        <source>About 95 in 100 of your marks, bores and cuts stay within these. Measure a practice piece and enter what you find: the chances are a model with these figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Pegwright</source>
        <translation>Über Pegwright</translation>
    </message>
    <message>
        <source>About {total:.0f} min, {set_up:.0f} of them to set up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {total:.0f} min.</source>
        <translation type="unfinished"></translation>
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
        <source>Across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the axis: with its thickness it sweeps the room that fingers need.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across, from the centreline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Actions and words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a node</source>
        <translation>Punkt hinzufügen</translation>
    </message>
    <message>
        <source>Add a node to the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a node to {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a row for each part of the layout that is not listed yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an ear on the bass side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an ear on the treble side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the minutes to the step that is timed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add to the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add {held}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add {ids}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add {new_id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Afterwards, by hand: {words}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against the grain over {length} at {middle}, up to {steepest:.0f} degrees off it: fibres tear out. Leave a shaving for a last light pass, or rout it with the {other} up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All are still the defaults: common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All in all things take {overall:.2f} times the plan; a step that was timed for long counts by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All samples are invented. Margins and rates marked as common practice have no published source: set what you trust.</source>
        <translation>Alle Beispiele sind erfunden. Sicherheitsabstände und Zeiten, die als üblich gekennzeichnet sind, haben keine veröffentlichte Quelle: stelle ein, worauf du dich verlässt.</translation>
    </message>
    <message>
        <source>All that is held comes as far from the centreline as the first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that is held comes to the height of the first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the axis that fingers turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along, from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along, to the tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt while dragging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+1 … Alt+9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+Up, Alt+Down</source>
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
        <source>An edge needs two different ends.</source>
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
        <source>An opening in the head that the posts of side tuners cross.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An operation takes between 0 and {longest:,.0f} minutes: {minutes:g} cannot be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An outline from a DXF or SVG file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An unevenly stretched arc is no arc: turn it into curves first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An {bit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {more} more that cannot be done: each is marked below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {n} more step that cannot be done: each says why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {n} more steps that cannot be done: each says why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {n} more thing that this order spoils or makes harder: each step says it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {n} more things that this order spoils or makes harder: each step says it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {n} more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {n} smaller corner more to pare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {n} smaller corners more to pare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another plan than the best: your choice is kept in the layout.</source>
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
        <source>Apply the finish and let it harden.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc length from the nut line to the first of the row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc length from the nut line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys, in the solid view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys, with a tool in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As far as the table goes either way: bores that want more are told.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As large as on paper (1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As long as the plate, and a little more for the chisel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As spread along the edge, and they stay a row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As spread, and they stay a row: one spacing for all.</source>
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
        <source>Ask me next time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aslant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At 100 %, corrected for the printer.</source>
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
        <source>Axis below the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the beginning</source>
        <translation>Zurück zum Anfang</translation>
    </message>
    <message>
        <source>Back to the best order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the best plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to “{name}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to: {name}</source>
        <translation>Zurück zu: {name}</translation>
    </message>
    <message>
        <source>Back up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base for block heights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base rests inside by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bass and treble change places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bass edge, treble edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bass slots and tuners, mirrored to the treble side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bearing diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bearing height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Becomes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you swap steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin another layout beside this one.</source>
        <translation>Einen weiteren Entwurf neben diesem beginnen.</translation>
    </message>
    <message>
        <source>Begin from numbers, a sample, a drawing or a picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begins, from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun from a few numbers; every part of it can be changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Behind the post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Being worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Being worked out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend an edge of the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend an edge of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside {slot}, open by then, the thin wall gives way to the drill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Better places may help more than finer work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between strings of a course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the centres of the outer strings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bit</source>
        <translation type="unfinished"></translation>
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
        <source>Bit {bit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank: length past the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank: thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank: width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block heights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blocks are nested more than {deepest} deep: break them up in the program that drew them, and export again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Board between openings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore</source>
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
        <source>Bore to bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore to outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore to slot wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore {k}</source>
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
        <source>Both square edges are there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break angle over the nut in degrees: 7 to 17 is good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring back what the file held before it was saved last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring into &amp;line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring into line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring to one &amp;height</source>
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
        <source>Button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Button close to the wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Button points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Button to button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buttons close together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the job book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the minutes now set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By what the job book holds it takes about {hours:.1f}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By what this job took</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be done here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be done: {blocked}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be done: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catch the grid, edges and neighbours while dragging.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions: wear eye protection; no gloves, loose sleeves or loose hair near a turning bit. Hold the work in a vice, clamp or jig and back up every exit. Stop the machine before you measure or change a bit. Rout in several light passes against the turning of the cutter. Test on scrap. The manuals of your machines and local rules come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre to centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centreline to the bass edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centreline to the treble edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centres of {drill}, all {across}, from the nut line: {along}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centres of {drill}, from the nut line (and from the centreline): {each}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chan&amp;ges to this layout</source>
        <translation>Änderun&amp;gen an diesem Entwurf</translation>
    </message>
    <message>
        <source>Chance: being worked out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chances being worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chances: {trouble}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the width of the nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the {target}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change to {names} there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed by another program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Changes to this layout</source>
        <translation>Änderungen an diesem Entwurf</translation>
    </message>
    <message>
        <source>Check the 100 mm bars on the paper before you glue it, and try the plan on scrap before the blank.</source>
        <translation type="unfinished"></translation>
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
        <source>Choose another plan</source>
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
        <source>Choose the hardware to place first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choosing a post changes the two strings over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chop out what stands between the holes as far as it comes easily.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chop out what stands between them as far as it comes easily.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clamp the head flat and work the edge square to the line with spokeshave, rasp and file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaning up plugs the pin holes that bring the template back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaning up takes the papers off, and their marks with them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear a bore after finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the finish out of the counterbore of {of} by hand until the bushing presses in at {diameter}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climbing cut</source>
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
        <source>Close gaps up to</source>
        <translation type="unfinished"></translation>
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
        <source>Collets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colou&amp;rs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comes out sound: being worked out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comes out sound: {chance}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice, no source, would be {usual}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice, no source: set what you trust.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;bass to treble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy bass to treble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy in the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the layout's rack to where your own is kept for all layouts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the report</source>
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
        <source>Copy tuners, slots, pins and holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy your own rack into the layout. Choices of bits that it does not hold are dropped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner 1 is the upper left one in the picture, 2 upper right, 3 lower right, 4 lower left. The picture is set straight by them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner 1 to 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner 2 to 3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corners of wood rounded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corners tighter than the cutter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct a printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct a printer…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corrected by what the timed steps took.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counter-clockwise from straight across to the treble side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counterbore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl and arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Enter makes the move that cures the snag in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cure: {cure}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a flat for a plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut a flat {rock} mm deep for it, or slide it to where the edge is straighter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut from a board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut it out, fold it back along both fold lines and glue it on the square blank, nut line on nut line: it marks the face and both edges.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut it {needed} mm larger.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut list and parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut the flat {needed} mm shallower, or make {opening} narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut the template to its paper, true its edges, and mark centreline and nut line on both of its sides.</source>
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
        <source>Cutter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutter diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutting length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DXF, SVG, PDF and the hole table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark colours; the same key goes back to the light ones.</source>
        <translation>Dunkle Farben; dieselbe Taste führt zu den hellen zurück.</translation>
    </message>
    <message>
        <source>Dashed heavy: the router runs against the grain or across it. Arrows: the way to feed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deep enough for the plate: {depth}</source>
        <translation type="unfinished"></translation>
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
        <source>Degrees aside at the nut: up to 6 is good, up to 10 tolerable.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth</source>
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
        <source>Depth stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digits, with a tool in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distances between two holes, and how: over the wood left between, between the far walls, over pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do differently ({piece}): {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not cut from these sheets yet, something spoils the work: {first}{rest}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not cut from these sheets yet: something spoils the work, see {command}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not work in this order: {n} step in it is impossible or unsafe. Put them in their places, or go back to the best order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not work in this order: {n} steps in it are impossible or unsafe. Put them in their places, or go back to the best order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done again: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double click on an edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double-click the edge to add a node. Hold a node to type its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down, to the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag a step to move it, or press Alt+Up and Alt+Down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the picture behind the drawing, with Shift turn it about the middle of the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the picture; with Shift it turns about the middle of the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the picture; with Shift turn it about the middle of the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the two marks to the ends of the nut: it comes to lie on the nut line, its middle on the centreline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag them, or go back to the best order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to turn, roll the wheel to come closer. Arrow keys turn, + and - come closer or step back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a new outline: press for each node, close it on the first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a slot of any shape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw at least one edge before closing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw it yourself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the outline again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the shape or import it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw {ids}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw {into}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawings (*.dxf *.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill a bore from the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill a hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill a pilot by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill a waste hole</source>
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
        <source>Drill press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill press: clamp the work so that the drill cannot turn it, guard the chuck, take the key out before starting, wear eye protection and nothing loose, back the exit with a spoil board, expect the drill to grab as it breaks through. For a tilted bore fix table and work, start from a centre mark, feed slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill the waste out of {slot}: {n} hole with {drill}, {how}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill the waste out of {slot}: {n} holes with {drill}, {how}.</source>
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
        <source>Drill wander in 50 mm</source>
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
        <source>Drilled from the</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drills and bits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E, Shift+E</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each is drawn from its own layout. A copy opens; the sample stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear {id} belongs to the blank and is not copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear, {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear: {ear}</source>
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
        <source>Edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge to the next node</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edges: diameter, tilt of the table (positive: the bore climbs to the tip on its way out), stop from the square edge to full diameter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emptying {slot} takes {pin} away, and the template no longer finds its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End grain over {length} at {middle}: go lightly, and back up the corner at {last}, where the fibres break away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ends, from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter a longer drill in the rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter takes these pins, Esc puts back: {words}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the drill in the rack, or change the hardware pattern to one you have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter what the two 100 mm bars of a page measure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter what the two 100 mm bars of a printed page measure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equal centres put thick and thin strings at even steps; equal gaps leave even room between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equal steps along the edge, measured on the curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equal steps on the line from the first tuner to the last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every beginning can be changed in all its parts, and nothing is saved until you say so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every drilling with its mark, tilt and stop; the same table is in the CSV file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every operation in the order in which it is done at the bench, so that nothing becomes impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every setting, separated by commas.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every step with a box to tick, set-up after set-up; block heights for the tilts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every string already has its best post.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything could be {times:g} times rougher.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Face in the middle, square edges folded flat beside it, as far as they are still there. Crosses are still to be drilled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Face tuner, {tuner}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Face up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Face up: along {slot} drill {many}, {diameter} wide, {how}{apart}.{chop}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Face up: from {begins} above the nut line file a slope {half} wide down to {slot}, from nothing to {depth} deep over {length} ({angle:.1f} degrees).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fastest setting</source>
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
        <source>File a ramp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Final diameter {of}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find any action, its keys, or a word of the trade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fingers need room between the buttons as they turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish builds up in the bore: brought to size before it, the bushing no longer goes in and chips the finish at the rim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish goes on sanded wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish the outline by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finished sizes in {unit_words}, length along the grain. Allow for the saw and the plane as you are used to.</source>
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
        <source>First to last string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flat for {tuner}</source>
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
        <source>Flat under the plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follower has to rub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follower in the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follower on the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Following the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the drill press one a tuner: mark, tilt, blocks, drill and stop, with a section to scale. For the router one a slot and one for the outline: bit, template, passes, waste holes. Cut them apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forget the correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forget the time that runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forstner bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forward to: {name}</source>
        <translation>Vor zu: {name}</translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free it from the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From A to B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a drawing…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a few numbers…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a photo or scan…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From an imported drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From an invented sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From face to back, planed. Side bores lie at half of it unless they say otherwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From field to field as the window is read; F6 from part to part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From node to node of the outline or the drawn slot that is held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From numbers</source>
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
        <source>From the centreline, positive to the treble side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the column to the drill's axis.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the drawing into the first field of the panel; Esc comes back</source>
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
        <source>From the nut line, positive to the tip.</source>
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
        <source>From the router's base to the tip, bearing included, as far as it may be set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the square edge in to the glue line.</source>
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
        <source>From tuner to tuner</source>
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
        <source>Full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full-size sheets: print at 100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Generic set by gauge…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Generic set of strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ghost lines show it: widest side angle {worst} to {worst_then} degrees, typical {mean} to {mean_then}, crossings {crossed} to {crossed_then}.</source>
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
        <source>Glue an ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glue it on the back, nut line and centreline on their marks: prick what is drilled from behind (full circles).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glue it on the template sheet, prick every cross, cut. {words}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glue line</source>
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
        <source>Glue with the nut line and the centreline on lines squared on the wood. Prick where the hairlines cross. Dashed circles are drilled from the other side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glue {ear}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glue {ear} to the {side} side, let it dry, then plane face, back and edge flush and square.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glued on: {ears}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with one that you saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to another machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the next snag and choose its card; S does it on the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the snag before; Shift+S does it on the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guide bush</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guide bushes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>H = L x sin(tilt): L is measured along the board from its lower edge to where it rests on the block, H is the block. Set it, drill a scrap, check the angle, then drill the blank. The board of the rack is L {base}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of follower less cutter: how far the cut lies from the template's edge. An opening in the template is that much larger than the slot, an outside template that much smaller than the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hang what was copied at the pointer; a press sets it down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardboard that the follower runs along; it is larger or smaller than the cut by the offset.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardware by its dimensions: hold each part against them before you drill.</source>
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
        <source>Headstock layouts (*.headstock.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Headstock, opened-out view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height above the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hide the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold &amp;all tuners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold a corner first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold a node first (K): the new one comes into the edge after it.</source>
        <translation>Erst einen Punkt halten (K): der neue kommt in die Kante danach.</translation>
    </message>
    <message>
        <source>Hold and drag nodes, handles and edges.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold at least {n} things first: press with Shift, or pull a frame round them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold every tuner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold the next thing of the drawing; N does it on the drawing.</source>
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
        <source>Hold the thing before; Shift+N does it on the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold tuners, slots, pins or holes first: these can be copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hole meets a ramp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hole table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hole {of}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hole, {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holes come out {by} too deep on average: set the stop anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holes come out {by} too shallow on average: set the stop anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Hours, money and notes, and what the next job will take.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours, money, what to do differently: recorded, or to fill in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How deep a bit can cut below the router's base, less the template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How deep the drill press is set, from where the drill enters: to its full diameter, or to its point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How deep the ramp lies where it meets the slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far a mark on the wood strays from where the paper says, either way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far a string turns aside at the nut on its way to the post, seen from the face. Small angles keep a string in tune.</source>
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
        <source>How far the cutter leaves the template's line, and the template its pins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the depth strays from what the stop was set to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the drill has run off its axis 50 mm deep; half as far 25 mm deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the head leans back from the line of the neck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the line may stray</source>
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
        <source>How far the proposal is</source>
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
        <source>How far the table is from the tilt that you set, and from square for a bore through the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far your marks, drills, angles and stops stray from what was meant. With it the program reckons how likely a clearance is to hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far your shop strays stands in the Blank stage.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much a string bends down over the nut: the pitch of the head and the drop from the nut to the winding together. Too little and the string rattles in its place, too much and it binds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much the printed paper has stretched or shrunk; the 100 mm bars on each page tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How tall the ring is: so much of it can rub.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How they are mounted, {word}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I want that it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Impossible in this order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the running order: move the step that is picked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the running order: the step before, the step after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the template nothing is left between {id} and {beside} at {place}: choose a follower nearer to the size of the cutter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the vice with the {surface} up and the {lies} against the fence: drill the {what}, {diameter} wide, at its mark {along} from the nut line and {below} below the face; stop at {stop}, {point} to the point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the way: {names}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inches, &amp;decimal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inches, &amp;fractions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inside an opening feed clockwise, seen from above: against the turning of the cutter. Never climb-cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inside the wider bore there is no wood left for {pin}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It breaks off before its end: use the version before it, if there is one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has happened {count} times since this opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not text in UTF-8.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It leaves {left_depth} of wood standing at {at}, more than its own diameter: a slimmer cutter would get farther in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It names a field twice, at {found}: keep the one that is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It pulls with {pull:.0f} N, as a weight of {weight:.1f} kg would.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It reaches only {step_of} into the wood from the back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It reaches {down} into the wood, because {binds}; the wood is {thickness} thick, and even turned over it would have to reach {half}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It reaches {down} into the wood, because {binds}; {of} is {depth} deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It runs through {ear} or its glue line: the ear must be on and dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was saved as {name}: save it again as UTF-8.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was set aside as {aside}, nothing of it is lost; a starting rack takes its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It would scratch and dent what has been sanded already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its bearing and its cutter differ in size, so it cannot copy a wall that is cut already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its bearing is {height} high and {contact} have to rub on the template: take a bit with a higher bearing, or ask for less in the margins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its bearing is {height} high and {contact} have to rub: take a bit with a higher bearing, or ask for less in the margins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its cutter is wider than what follows the template, so all {cutting_length} of its cutting edges have to be down in the wood before it may touch the template, and a pass may take only {first}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its cutter is wider than what follows the template, so the template opening is only {opening} wide and the {cutter} cutter cannot be lowered through it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its cutting edges are {cutting_length} long and a pass may take {first}: so high up in the {template} template they leave {left} of the {what} to rub, and {contact} are wanted. A template of {thick} would do, or a cutting length up to {most}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its place is unwise for {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its place makes impossible {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its place makes unsafe {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its {cutter} cutter does not get everywhere in {of}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its {cutter} cutter does not pass {of}, which is {width} wide where it is narrowest: up to {width} would.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its {shank} shank is thicker than its {diameter} bearing and would rub first: check the numbers in the rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job book</source>
        <translation>Werkbuch</translation>
    </message>
    <message>
        <source>Join pages row by row from the nut end, left to right: cut one page along the row of short strokes, lay it on its neighbour so that lozenges with the same letter meet, tape; then join the rows in the same way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>K, Shift+K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep one axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the table set and turn the blank over about the centreline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this one as mine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeps proposals from moving it and from giving it another string.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept for you in {path}. Layouts hold copies of their own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of edge drawn next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lang&amp;uage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger (+)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest bit that passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last change written down: {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later: {words} The stop above reckons with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a &amp;photo or scan behind the drawing…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a line across the head and see what it cuts; drag its ends or the whole line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a slot across its way, or slide {item} to where a slot lies ahead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a spoil board below: the last pass comes through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay it there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {name} behind the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {path} behind the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laying out the pages…</source>
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
        <source>Least height of the follower that rubs on the template.</source>
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
        <source>Leave as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it where it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the blank {by} mm longer at the {end} end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the flat out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the line, add a slot beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the ramp out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaves a mark that does not cost the piece: {chance}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out, because they cannot be reached: {left_out}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out, because they cannot be reached: {title}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: {skipped}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left to pare by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left, by the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left-handed mirror</source>
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
        <source>Length of the board whose one side is raised by blocks to tilt the work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length of the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length over all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length that drills</source>
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
        <source>Less than a minute.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let go of snapping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let go of your own order: the one with the fewest changes again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the picture show more faintly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the picture show more strongly.</source>
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
        <source>Level of grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level of grey between head and background</source>
        <translation type="unfinished"></translation>
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
        <source>Lines touch or cross one another; the outer border of what they enclose was taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List the hardware</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List what was done, and go back to any of it.</source>
        <translation>Auflisten, was getan wurde, und zu jedem Schritt zurückgehen.</translation>
    </message>
    <message>
        <source>Lists &amp;lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists &amp;taller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Little wood above or below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locating pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locating pin hole {of}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locating pin holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locating pin near the blank's edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locating pin, {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the head from this side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at x {x:.1f}, y {y:.1f}, z {z:.1f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look closer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for better places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for a move that cures it …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for better places…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for places…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lying bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machines and template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machines: {others}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made for the bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a copy to change</source>
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
        <source>Make another of what is held.</source>
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
        <source>Make the outline s&amp;ymmetric</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the outline symmetric</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the ramp of {slot} shorter, narrower or less deep there, or move one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the template for this plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {ear} {measured} mm wider or narrower, or move {item} as much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {node} a corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {node} smooth</source>
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
        <source>Margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margins wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark below the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark on the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks on {papers}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May stray by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure both bars of each page: 100 mm from end tick to end tick, or throw the page away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure places or distances of holes that one part joins: then it shows whether the part goes on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the finished holes with a caliper; Enter goes to the next hole. An emptied cell is struck out. On the bass side of the centreline x is below zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the finished piece and write each reading under its plan; the Readings page of the job book takes them. x is from the centreline, treble side positive, y from the nut line, both to the middle of the hole; bores from the side: below the face in place of x. In</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure x and y of five holes or more, far from each other: then a printer that stretches shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure your own: how far the centre stands ahead of the full diameter.</source>
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
        <source>Middle button, or Space and drag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mind:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mind: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes (common practice, no source: yours are better)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes found by the job book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror the whole layout about the centreline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirrored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money, both pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than 10 degrees: it tends to catch in the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mostly {one}, then {two}, then {three}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mostly {one}, then {two}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mostly {one}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move as shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move both, or choose smaller hardware.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move that wall of {opening} {needed} mm away, or give string {string} a post more in line with its place at the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the border between the drawing and the panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the border between the panel and the lists below it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the border the other way.</source>
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
        <source>Move the paper under the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the pen by 1 mm; with Shift 10, with Alt 0.1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the {part} end of {target}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move them apart, or join them into one drawn slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move tuners as proposed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {item} {needed} mm nearer the edge, or choose a longer shaft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {lead}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {n} things</source>
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
        <source>Move {target}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {title} in the order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {what} {ways}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moving {n} tuners by up to {far} brings the chance that it {aim} {gain}. It is shown dashed on the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moving {tuner} by {far} brings the chance that it {aim} {gain}. It is shown dashed on the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>My own rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ew window</source>
        <translation>N&amp;eues Fenster</translation>
    </message>
    <message>
        <source>N, Shift+N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name the printer: the correction is kept for that one alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrowest: the largest cutter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New: across {across:.3f}, along {along:.3f}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Newtons on the nut: 10 N is the weight of 1 kg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Newtons on the nut: what a string presses down with where it bends; 10 N is the weight of 1 kg. Friction is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next &amp;part of the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next &amp;snag</source>
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
        <source>No bit is chosen for the template, so sheets and files carry no template lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bit is chosen, so there are no template lines: outline and slots are the finished size. Choose a bit before you cut a template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bit of the rack can rout the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bit of the rack can rout {slot}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bore of the {side} edge meets the square edge of the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No brad point or Forstner bit of the rack is slim enough for {slot}: up to {widest} would do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No clearance came under its margin in any trial.</source>
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
        <source>No hardware in this layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No line of the drawing can be used: draw or export the outline anew. {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No loop is the outline yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No mark on the square edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No move of a tuner that you left free helps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No order can do with fewer than {bound} changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No order of these steps needs fewer changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No order works</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No order works: {parts}</source>
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
        <source>No router bit does this in one set-up: change the depth, the width or the template.</source>
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
        <source>No slot yet: choose New slot and press where its nut end goes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No snags.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No straight edge at the end could be the nut line: the lowest point and the middle of the outline were taken{turned}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stretch of the printer shows ({odds} that as much comes by accident).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No string winds on {tuner}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No string winds on {tuner}: give it one in the table of strings first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No such drill in the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No template lines are printed: choose this plan's bit for the template first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No template lines: {error}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No timer runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No two pins find room {where} with {clear:g} mm clear of everything and {apart:g} mm between them: {cure}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No waste holes: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way to serve these posts keeps the strings from crossing: let a held post go, or move one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Node</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Node {node} of the {ref}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nodes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not all of it is text in UTF-8: some bytes were spoiled or it was saved by something else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in the rack: {missing}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved there</source>
        <translation>Nicht dort gespeichert</translation>
    </message>
    <message>
        <source>Not sound as drawn: one snag that spoils the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sound as drawn: {n} snags that spoil the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note in the job &amp;book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note to a step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note to this step…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes: do this differently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be routed with this rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has this in it: try another word.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has to be finer: as you work now, the chance that it {aim} is {now}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in the drawing has a line or a fill; its invisible shapes were taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is held.</source>
        <translation>Nichts wird gehalten.</translation>
    </message>
    <message>
        <source>Nothing is kept for this printer and paper yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is spoiled by this order; what is unwise in it is marked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is straightened: for scans, and for photos taken square from far away. The farther apart the points, the better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is timed yet: the first entry begins to correct the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on this shelf yet: add one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing strays here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was written since the layout was opened</source>
        <translation type="unfinished"></translation>
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
        <source>Now the chance that it {aim} is {now}. Even ten times finer work does not reach {wanted}: {what} has to change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now the chance that it {aim} is {now}. Hold what follows, all of it and only there, and it is {then}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now: {words}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nudge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nudge the node</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nudge what is held by 1 mm; with Shift 10, with Alt 0.1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nut and strings</source>
        <translation>Sattel und Saiten</translation>
    </message>
    <message>
        <source>Nut end, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nut end, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nut line to the far end</source>
        <translation type="unfinished"></translation>
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
        <source>Of the edges along the axis.</source>
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
        <source>Of {n} moves of one part that were tried, up to {far} mm, none does it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of {trials:,} headstocks built in your shop's accuracy. Sound: no wood is broken through that costs the piece: {sound}. Every margin kept: {within}. {model}</source>
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
        <source>On the drawing: hold the next thing, the thing before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the same template {names} does it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once the outline is cut there is no square edge left: nothing for the vice to hold, and the mark is gone with the waste.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One alone would do as well: {ways}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One name for one thing; cards, notes and the running order use it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One reading is so far off that a slip of the pen is likelier; left out below: {which}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One round of the router at one depth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One template serves for everything, offset {offset}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One unit of the drawing is</source>
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
        <source>Only after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only {length} of {bush} stands out of the base, and {contact} have to rub on the template: take a longer bush.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only {rubs} of its bearing would rub on the template below, and {contact} are wanted: take a thicker template or a bit with a higher bearing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only {wide} of template is left between {id} and {beside} at {place}, {needed} are wanted: choose a follower nearer to the size of the cutter, or back the template with a second board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only {wood} of template is left beside {pin}, {needed} are wanted: move the pin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a layout</source>
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
        <source>Open a layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a layout…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open in a new win&amp;dow…</source>
        <translation>In neuem &amp;Fenster öffnen…</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the version &amp;before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the version before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened &amp;lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened from: {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened-out view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Openings for tuners through the side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opposite bores need one table setting; the blank is turned over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out, to the button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outline</source>
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
        <source>Outline to blank edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outline {width:.2f} x {height:.2f} mm; one unit of the drawing is 1 {unit}, {source}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside a template feed counter-clockwise, seen from above: against the turning of the cutter. Never climb-cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside, windings included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over an open bore the point of the {bit} finds no wood: it wanders and tears the rim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the open hole of {pin} the point of the {bit} finds no wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over {slot} at {at} the router's base of {base} stands only {inside} inside its support: fit a wider base, or cut the template from a larger board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over {slot} at {at} the router's base of {base} tips into the opening: fit a wider base, or cut the template from a larger board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page Up, Page Down, on a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page as it will be printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Panel &amp;wider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Panel na&amp;rrower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper does not stretch by {value:g} %: measure the 100 mm bars and enter up to 5 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers at full size, to print and glue on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pare by hand at {at}: {depth} deep, {size} of wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pare it by hand, or choose a slimmer bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part be&amp;fore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass {at} of {pictures}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste papers and prick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste the papers and prick the centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste the wrap paper round face and both square edges{back}, check it with a rule, and prick every centre.</source>
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
        <source>Pegwright plans; it does not make a machine safe. The machine's manual, the rules where you work and qualified instruction come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pegwright speaks the chosen language when it is started again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.tif *.tiff *.bmp *.webp *.gif)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece turned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin holes are drilled through template and blank together: drilled apart they never quite meet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin to anything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins not mirrored for a template that turns over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pitch of the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a hole that belongs to no tuner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a locating pin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a tuner of the hardware chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place hardware; every hole follows from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plain post bore without a bushing, small open gear, one screw in line with the button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan for those entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan the holes, slots and templates of a guitar headstock</source>
        <translation>Löcher, Schlitze und Schablonen einer Kopfplatte planen</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans the holes, slots and templates of a guitar headstock, for makers in small shops.</source>
        <translation>Plant Löcher, Schlitze und Schablonen einer Kopfplatte, für Gitarrenbauer in kleinen Werkstätten.</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate inside the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate on the curve</source>
        <translation type="unfinished"></translation>
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
        <source>Plate to plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plates overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point ahead of the rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point counted with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point to where the arc should end, away from its centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Post bore</source>
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
        <source>Post end to inner wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Post is longer than its bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Post of string {string}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Post through the face in a pressed bushing, body on the back, a screw to either side along the edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press inside the head. The largest closed edge round that place is followed; corners stay corners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press on a post to lead its string past its other side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press on a post to lead its string past the other side of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press on a thing to hold it, drag it to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press on a thing to hold it, drag it to move it. Shift keeps one axis, Alt lets go of snapping.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press on one thing, then on another: the shortest distance between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press where the nut end goes, then the tip end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press where the outline leaves the nut line, then node after node: the bass side follows. Keys s, a, t and c choose straight, arc, tangent arc and curve; type lengths and angles, Tab between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview of the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview of the headstock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print at 100 %, corrected for the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print at 100 %. Measure the 100 mm bars before you glue.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print at 100 %. Measure the bar before you glue.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print every page at 100 %, never fitted to the page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the cover, measure both bars from end tick to end tick as exactly as you can, best with calipers, and enter what you find. Only printed pages are corrected, never drawings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed at full size and glued round the blank: the face and both edges in one piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printers seldom stray by more than 2 %: look first whether a setting scales the page, and measure the bars once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Propose a ramp that frees the strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Propose an outline along the edge in the picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Propose p&amp;ins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Propose pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Propose posts for strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Propose which post serves which string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Protects {what}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurückgelegt</translation>
    </message>
    <message>
        <source>Put back what the drag moved; again: hold nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the pen down, or lift it: what is between is pulled, as the handle of a curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Qt and PySide6 are used under the GNU Lesser General Public License, version 3: they may be replaced by other builds of the same version. Their source text is at {place}. GEOS, inside shapely, is under the same licence, version 2.1; its source text is at {other}.</source>
        <translation>Qt und PySide6 werden unter der GNU Lesser General Public License, Version 3, verwendet: sie dürfen durch andere Ausgaben derselben Version ersetzt werden. Ihr Quelltext liegt unter {place}. GEOS, in shapely enthalten, steht unter derselben Lizenz, Version 2.1; sein Quelltext liegt unter {other}.</translation>
    </message>
    <message>
        <source>Quill travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R&amp;emove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rac&amp;k: bits, drills, machines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Racks (*.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Radius:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rail</source>
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
        <source>Ramp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ramp of {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ramp {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reach from the post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reaches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read a rack from a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read an outline from a DXF or SVG drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading of {drilling}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading {name}…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading {path}…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings, practice piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings, real piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Real against practice, {n} timed on both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Real piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>References are nested more than {deepest} deep in the SVG file: expand its clones in the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove bore {k}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the node</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove this ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove this hardware</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove what is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {held}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace this file?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report about the fault</source>
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
        <source>Rim speed at each setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ring the places where the shop's own errors do harm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roller of 10 through the side as on a slotted head, plate with a screw to either side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the cor&amp;ner…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the corner that is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the outside less than half of the base stands on the template, at {at} only {share:.0f} %: keep your weight on the template's side, or lay a piece of the same thickness beside the work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout the outline, 100 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout {slots}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout {slot} {by} mm deeper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout {what} from the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rout {what} from the face</source>
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
        <source>Rout, 100 mm and pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Router</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Router bits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Router: unplug before changing a bit, keep below the speed marked on it, secure the work, feed against the cutter's turning, take light passes, never shape small loose pieces, collect the dust.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row &amp;along the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row begins, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row begins, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row begins, along the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row heads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row stands in from the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule the paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;napping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S, Shift+S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same setting: {parts}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save elsewhere…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save mine elsewhere…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save mine here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the layout under another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the report…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved with the layout, so that it opens the same anywhere. Plans are made with this rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saving yours keeps theirs beside it as the version before. Taking theirs makes yours one undo away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saw out {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saw out, 100 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saw the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saw the outline, 100 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saw the waste off to within {light} outside the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scrap held behind the work so that the drill leaves into wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw to anything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw to outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screws and pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seat</source>
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
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section across, through {ids}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section along the bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section along the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section through the cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section through the piece at this step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section through the post, square to its edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sections across the cut, {scale_words}. The cutter has done this pass at the left wall; at the right it is to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen from behind: the treble side is on the left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set of strings</source>
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
        <source>Set the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set these two farther apart in the pattern {pattern}, or choose hardware with room between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set to scale, and its outline traced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set to scale, straightened, on the nut line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set two pins on the centreline, as far apart as the wood allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-ups and changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting up and changing over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shanks that the router holds, separated by commas; empty for any.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shares its setting with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift while dragging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+F3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+F4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+F6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+Space, with the pen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shop accuracy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shop accuracy, plus or minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorten {slot} by {by} at its {end} end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show lengths in decimal inches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show lengths in inches down to 1/64.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show lengths in mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show or hide the picture behind the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the build step by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the picture fainter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the picture stronger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the whole opened-out view.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the whole page (0)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side of the post through the face, over or under one through the side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side of the string on {at}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side tuner {id} cannot be brought to {axis} = {value:g} mm on its edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side tuner, {tuner}</source>
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
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of &amp;letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide {id}</source>
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
        <source>Slope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot</source>
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
        <source>Slot or outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot to nut line</source>
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
        <source>Slot, {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slots overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slots: {slots}. Holes: {holes}. Loops left out: {other}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller (-)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snag bef&amp;ore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snags: {counts}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some lines are so tangled that curves were replaced by short straight pieces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some shapes are clipped in the drawing; they were read whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some shapes are tilted out of the drawing's plane; they were taken as seen from above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something inside the program went wrong at “{doing}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something inside the program went wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something the checks found: it spoils the work, it is tight, or it is a note. Each says what, between which, how much is there, how much is wanted, and what would cure it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sort by size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sort the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space, with the pen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spacing of the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed printed on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speeds, turns a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spelching, breakout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spent, {timed} of {of} entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splinters torn out where a drill leaves the wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spoil board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spoils the work: {chance}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread along the &amp;edge</source>
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
        <source>Spread the strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square to the bore of {tuner} cut {what} into the edge about it, {depth} deep, and try the plate on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squaring a line across from the seat would miss the axis by {miss}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>St&amp;ronger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages, tools, drawing, panel, lists.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand on a step of the table first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands out of the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start anew in inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start anew in mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the rack anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the timer</source>
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
        <source>Steel core, if wound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steel post of 8 through the side, square plate with four small screws, for thick heads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steel post through the side, short plate on the edge, a screw to either side along the edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step after step, and the piece at each of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step through the passes; the arrow keys do it too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {number}:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {step}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stepped bore, 10 from the back and 8.2 at the face; two moulded pins keep the body from turning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps {steps}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stick the template to the face on its pins with tape that stays on, and saw {outside} outside the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stick the template to the face, on centreline and nut line, with tape that stays on, and saw {outside} outside the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop and count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the timer without counting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop without counting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop {measured} mm earlier, or use a drill with a shorter point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop, to full diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop, to the point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. Press in the head, or change a number, to try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight, an arc of one radius, or a curve that its two handles pull.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strike a cost out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strike a note out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strike this note out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strike this row out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String</source>
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
        <source>String hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String hole in the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String hole outside the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String hole to slot wall</source>
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
        <source>String runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String runs on the</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String to post, wall and ramp</source>
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
        <source>String {string}, course {course}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string}: over the post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string}: under the post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>String {string}: {side} side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strings in pairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strings that are played as one, usually a pair close together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strings, tuners and blank: a sound layout to go on from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Symmetric</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table level; depths from where the drill goes in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table tilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table tilts to either side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take into the minutes of the next plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take into the shop accuracy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it &amp;away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take mine into this layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take my rack into the layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take off the papers{plug}, pare what the router left, break the edges and sand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out tuners, slots, pins and holes, to put them down elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the file as it is now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the last entry back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the last step back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the picture away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the picture out of the layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the readings into the shop accuracy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the step again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take theirs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take what would do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tangent arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Template</source>
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
        <source>Template for a {tools}: {sizes}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Template thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Template {thickness} thick for {follower}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Template {thick} thick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Template {thick} thick below the wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Templates (*.dxf *.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is coarse: a picture with more points traces better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That set has {chosen} strings, the layout has {strings}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The DXF file is damaged and cannot be read: open it in the program that drew it and save it again as DXF.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The Delete key does the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The SVG file defines entities inside entities, which only hostile files do; it was not read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The SVG file expands to an enormous text through its entities; it was not read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The SVG file has more than {most_elements} elements: export only the outline, the slots and the holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The SVG file is damaged at line {line}: open it in the program that drew it and save it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The SVG file is damaged: open it in the program that drew it and save it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The SVG file nests its groups more than {deepest} deep: ungroup them in the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The SVG file refers to a shape from inside that same shape: expand its clones in the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The SVG file unfolds to more than {most_shapes} shapes: export only the outline, the slots and the holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The angle of the table for a side bore: how far the edge's normal turns from the square edge's.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The arrow keys go back to a step or forward to one; Home is the beginning.</source>
        <translation>Die Pfeiltasten gehen zu einem Schritt zurück oder vor; Pos1 ist der Anfang.</translation>
    </message>
    <message>
        <source>The axis of {hole} has no mark on the square edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The axis of {hole} never meets the {surface} of the blank: move the tuner to where the outline faces that edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The axis of {item} never meets the {side} square edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bass side follows the treble side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bearing on its tip keeps the cutter off the floor of a blind slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The beginning</source>
        <translation>Der Anfang</translation>
    </message>
    <message>
        <source>The bit {bit} has a bearing without a diameter: enter it in the rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bits, bushes, drills and machines that you own, described by their dimensions. Plans use nothing else.</source>
        <translation type="unfinished"></translation>
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
        <source>The blank turned over, so that the router reaches from the back what it cannot reach from the face. The template goes over with it on the same two pins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block '{clean}' contains itself: break it up in the program that drew it, and export again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block '{clean}' is clipped in the drawing; it was read whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block '{clean}' lies in another file and was not read: bind it in the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block under one side of a board {base} long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The board alone, with openings and pin holes, as DXF or SVG at full size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bore shows where the flat goes and how it lies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bore takes {pin} away, and the template no longer finds its place.</source>
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
        <source>The chances now reckon with what you measured; one undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The core between the waste holes comes loose under the cutter and is thrown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The corrections of your printers in {path} cannot be read: {strerror}.</source>
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
        <source>The cutter nearly fills the slot and cuts both walls at once: hold the router firmly and go slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cutter would have to clear the whole waste outside the outline: it grabs, and tears out where the grain climbs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cutter would have to clear {slot} in full wood: it grabs, burns and bends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The data of some shapes is damaged; they were drawn up to the damage, so compare the outline with the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dimensions that this tuner has. Change them on the Tuners stage while nothing is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing cannot be read: {error}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing could not be read: the reader stopped without an answer; save the drawing again in the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing does not say its unit; as {unit} it would be {sized}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing does not say its unit; {unit} was guessed from its size, {sized}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing does not state its size; 96 units to the inch were assumed, which makes it {sized}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing has no closed outline: its lines do not close.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing has no closed outline: loose ends are {size:.3f} mm apart at ({x:.2f}, {y:.2f}) mm and at {n} more places; join them in the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing has no closed outline: loose ends are {size:.3f} mm apart at ({x:.2f}, {y:.2f}) mm; join them in the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing holds no lines or curves that can be used, only {skipped}: export the outline as lines, arcs or curves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing is empty: it holds no lines or curves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing is nested too deeply to be read: ungroup it in the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing lay {x:.4g} mm from its origin; it was moved by ({dx:.0f}, {dy:.0f}) mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing needs more than {memory_mb} MB of memory to read: export only the outline, the slots and the holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing says that its unit is {unit}, which makes it {sized}: no headstock is that size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing takes longer than {seconds:g} seconds to read: export only the outline, the slots and the holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing unfolds to more than {most_shapes} shapes: export only the outline, the slots and the holes.</source>
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
        <source>The drill meets the edge at {tilt} and skates: use a guide block or start with a short, stiff drill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drill press has to be reset during the hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drill would break out into {slot}, open by then: no wood stands behind the wall, and past it the drill wanders.</source>
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
        <source>The edge that the follower rubs on.</source>
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
        <source>The ends are {apart:.2f} mm apart, so the radius must be {half:.2f} mm or more.</source>
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
        <source>The face in the middle and both square edges folded flat beside it, exactly as the wrap paper is printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The face lies between the sheet and the camera.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file '{fspath}' cannot be read: {strerror}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file ends before its end mark: something may be missing, so compare the outline with the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file holds neither a DXF nor an SVG drawing, only binary data: export DXF or SVG from the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file holds neither a DXF nor an SVG drawing: export DXF or SVG from the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a 7z archive; unpack it and import the drawing inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a DWG drawing, which cannot be read: save it as DXF and import that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a PDF; export DXF or SVG from the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a PostScript page; export DXF or SVG from the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a picture (BMP), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a picture (GIF), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a picture (JPEG), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a picture (PNG), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a picture (TIFF), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a program, not a drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a rar archive; unpack it and import the drawing inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a solid model (STEP); export the flat outline as DXF or SVG.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a solid model (STL); export the flat outline as DXF or SVG.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is a zip archive; unpack it and import the drawing inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is an empty zip archive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is an office document, not a drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is compressed (bzip2); unpack it and import what is inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is compressed (gzip); unpack it and import what is inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is compressed (xz); unpack it and import what is inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is compressed (zstd); unpack it and import what is inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is empty: save the drawing again and import that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is not an SVG drawing: its first element is &lt;{tag}&gt;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is {size:.0f} MB, over the limit of {most_bytes:.0f} MB: export only the outline, the slots and the holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file was damaged and had to be mended in {n} place: compare the outline with the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file was damaged and had to be mended in {n} places: compare the outline with the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file was damaged and had to be mended: compare the outline with the drawing.</source>
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
        <source>The folder {out_dir} cannot be made: {strerror}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder {parent} for your printers cannot be made: {strerror}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder {parent} for your rack cannot be made: {strerror}.</source>
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
        <source>The gap to close must be above 0 and at most 5 mm, got {join:g}.</source>
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
        <source>The head in space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head in space, to be turned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The highest number of turns a minute that is printed on the cutter.</source>
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
        <source>The hole of {of} leaves no wood for a centre point: open it up with a twist drill or a reamer, clamped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hole that the cutter passes through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The horizon runs through the picture: put the four corners more carefully, or cut the picture to the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The id {id} is used more than once among the {where}: give each its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The import could not be started: {error}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The import was cancelled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The invented starting rack, sizes in inches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The invented starting rack, sizes in mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job book has its own way back: undo of a drawing step never touches it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job book times {operation} of the {piece} piece more than once: keep one (at $.book.times).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job book was not written</source>
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
        <source>The knots of a spline must not go down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The later cut follows the wall that the earlier one left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout begins with the starting rack: {error}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout changed meanwhile: ask again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout changed while places for pins were looked for: ask again.</source>
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
        <source>The layout has no strings yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout has no {words}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout is saved; the version before it could not be kept beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout now holds a copy of your rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least wood that is to stay between two things. The margins given are common practice without a published source: set what you trust.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The level that parts dark and light best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line has no area inside yet: draw on before closing it.</source>
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
        <source>The line where nut and head begin: everything along the head is measured from where it crosses the centreline.</source>
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
        <source>The mark before, the next mark; arrow keys move it</source>
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
        <source>The next job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next larger letters, up to twice as large.</source>
        <translation>Die nächstgrößeren Buchstaben, bis zur doppelten Größe.</translation>
    </message>
    <message>
        <source>The next pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next smaller letters.</source>
        <translation>Die nächstkleineren Buchstaben.</translation>
    </message>
    <message>
        <source>The next snag, the snag before; Ctrl+Enter in the list makes the move that cures it</source>
        <translation type="unfinished"></translation>
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
        <source>The number for {field!r} is not a length between 0 and 1000 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of weights does not match the control points of a spline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The nut and where the strings leave it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The nut measures {nut}, one point of the picture {point}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The one move that was tried does not do it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The order is your own; the best one has {n} change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The order is your own; the best one has {n} changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline and the hardware are a beginning: measure your own tuners, and change what you like.</source>
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
        <source>The outline is finished, seats stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline is sawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline leaves the blank by {measured} mm at the {side}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline measures {sized}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline measures {width:.0f} x {height:.0f} mm, far more than a headstock: give the right unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline of the layout is replaced; tuners and slots stay where they are. The picture's own errors come on top: check the first print with the 100 mm bar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline or a slot set in or out evenly, or a slot beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline touches the nut line in one point only, so it has no edge to rout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The owners have not chosen a licence yet: all rights reserved.</source>
        <translation>Die Eigentümer haben noch keine Lizenz gewählt: alle Rechte vorbehalten.</translation>
    </message>
    <message>
        <source>The page says that it was corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pages need {papers}: print them apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part of a tuner that fingers turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part of a tuner that the string winds on; the string hole goes through it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part that the collet grips. Without a bearing it may rub on the template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pass before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The path is broken at ({x:.3f}, {y:.3f}): the next segment starts {distance:.3f} mm away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pen: {x} points from the left, {y} from the top. Enter presses.</source>
        <translation>Der Stift: {x} Punkte von links, {y} von oben. Enter drückt.</translation>
    </message>
    <message>
        <source>The picture behind the drawing cannot be laid where it should: {error} (at $.picture.place).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture in this layout is damaged: lay it behind the drawing again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture is locked: unlock it on the Outline stage to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture lies behind the drawing. Trace it with Trace the picture, or draw over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture shows it with what would do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture shows the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece at this step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece on the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The piece, stage by stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pin {inside} stands in {slot}, in the way of the cutter that it is to guide: move the pin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>The plate of {feature} has no seat before the outline is finished.</source>
        <translation type="unfinished"></translation>
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
        <source>The plate of {tuner} is held in place by its post: without the bore it cannot be used to drill through.</source>
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
        <source>The point lies straight behind, so no arc goes on to it: choose another edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The point of {drill} would mark the floor of {slot}, which is {depth} deep.</source>
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
        <source>The print lacks some letters of the layout's name and shows others in their place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printed template is another: choose {tool} for the template and print it again, or none of this fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer stopped after page {i} of {wanted}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer's correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer's stretch explains the places ({odds} that as much comes by accident): what should be 100 mm came out as {across:.2f} mm across the head and {along:.2f} mm along it. Measure the two bars of a printed page: if they say the same, correct the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The proposed line crosses itself: allow less deviation, or choose a cleaner picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The quill travels {quill}, less than this bore needs: drill, stop the machine, raise the table and go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack cannot be saved: {error}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack has no {diameter} drill for {hole}: add one, or change the pattern.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack holds all of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack holds no brad point or Forstner bit to drill the waste out with: add one.</source>
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
        <source>The rack in this layout</source>
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
        <source>The ramp runs out into {feature}: with the slot still full the file has nowhere to go, and the template no flat face to lie on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rates of the Order stage become what you found; one undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record of hours and money, of the practice piece and of the real one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rectangle needs a width and a height above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The report below tells whoever mends the program where the fault is. It holds no layout and no names of your folders; it is sent nowhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The report is on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The report is saved as {path}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The router has no collet for its {shank} shank (it has {sizes}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The router pushed the same way as its cutter turns: it runs away with the work. Feed against the turning, but for a last light pass where the grain asks for it and the machine's manual allows it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same the other way round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same, and what is held stays held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screws are drilled through the plate as it lies on its flat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The seam where an ear meets the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search was cut short: a better one may exist.</source>
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
        <source>The sheets were not printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheets were not written</source>
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
        <source>The sloped nut end of a slot, cut so that the strings dive in without touching wood.</source>
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
        <source>The slot is measured over its round ends, so it cannot be shorter than it is wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The square edges are gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stages along the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step after (Right)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step before (Left)</source>
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
        <source>The strings of {slot} do not come over its nut end: turn the slot so that it runs from the nut to the tip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strings of {slot} leave its ramp sideways: move their posts or widen the slot.</source>
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
        <source>The template finds its place on {pins}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template for it rounds the corner of wood at {at} by {lost_depth}: a follower nearer to the size of the cutter would not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template is larger or smaller than the cut by the offset of this bit and its follower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template is {template} thick and {contact} of the follower have to rub on it: take a thicker template.</source>
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
        <source>The template of sheets and files is made for {guide}, with an offset of {offset}; this plan needs {needed}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template of sheets and files is made for {guide}: it is the one of this plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template opening for {id} closes up: the cutter is {offset} wider than what follows the template. Choose another bit or a wider slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template opening for {id} falls into {found} pieces where the slot is narrow: choose a slimmer cutter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template rounds the corner of wood at {at} by {depth}, because its follower is wider than the cutter: keep clear of it and finish it by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template turns over for {turned}, but {worst} misses its mirror image by {a} mm, so the cut from the back would not meet the cut from the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template was not written</source>
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
        <source>The timer runs for “{title}”: stop it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tolerance is a length above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two long sides of the blank. Bass is left when the face looks at you and the tip is up, whichever hand the guitar is for.</source>
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
        <source>The unit '{name}' is not known: give mm, cm or inch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The version before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The version before was not opened</source>
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
        <source>The waste needs {stop} of drilling to come through, and the quill of the drill press travels {quill}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The waste needs {stop} of drilling to come through, and {drill} is {length} long.</source>
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
        <source>The weights of a spline must be above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The windings need air below the post.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood before it is shaped, with square edges. A vice holds it and a rule finds places on it only as long as those edges are there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood between a slot and the outline; side bores go through it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood between nut and slot carries the pull of the strings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood between two slots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood is too thin: it takes {least} mm for this bore.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood, its ears, and the margins wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The words hold half a character, which no file can keep: type them again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wrap paper folds round the outer face of {feature}: without the ear there is no edge to paste it on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {cutter} cutter does not pass through the guide bush "{bush}" with a bore of {bore}: choose a wider bush or a slimmer bit.</source>
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
        <source>The {name} bar was measured as {length:g} mm: between {least:g} and {most:g} mm can be corrected, more is a page that was scaled. Print it again at 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {name} bar would need a correction by {factor:.3f}, which no printer needs: measure a page that was printed without correction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {name} is {width:.0f} x {height:.0f} mm and would take {rows} pages of {paper}: bring in what lies far outside the head, or choose a larger paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {shank} shank does not pass through the guide bush "{bush}" with a bore of {bore}: choose a wider bush or a slimmer bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then saw it out to within {light} of the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no locating pins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no pages to print yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no pages to print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no snags.</source>
        <translation>Es gibt keine Haken.</translation>
    </message>
    <message>
        <source>There are {strings} strings and only {tuners} posts: add tuners first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are {strings} strings: from {least} to {most} work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are {strings} strings; from {least} to {most} work: give the {side} side {value}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a node at this place already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no drilling called "{id}".</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no edge to cut the flat into yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no hole to thread the blade through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no mark to work from yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no order yet: {error}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no paper called {name}: choose one of {papers}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no plan for the outline: it crosses itself or shuts nothing in. Move its nodes until it does not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no plan for the outline: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no plan for {slot}: its wall crosses itself or shuts nothing in. Move the nodes of {slot} until it does not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no plan to hold the hours against: {error}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no plan: {error}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no post here: press on a tuner to change over the side of its string.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no router plan: {trouble}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no slot named {slot_id}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no snag.</source>
        <translation>Es gibt keinen Haken.</translation>
    </message>
    <message>
        <source>There is no template to work along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no tuner named {tuner}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no version before this one: it is kept from the second saving on.</source>
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
        <source>There is nothing to print yet: the wall of {broken} crosses itself or shuts nothing in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to print yet: {error}</source>
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
        <source>These are the pages: print them with Ctrl+P.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These come before those, or the work is spoiled or cannot be done any more:</source>
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
        <source>They are on the wrap paper too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thin circles in the slots: waste holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thin: under its margin. Spoiled: no wood left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thing &amp;before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This drawing was not imported</source>
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
        <source>This head is {head:.1f} mm wide, so a blank {width:g} mm wide is too narrow: make it {wide:g} mm wide, or glue ears on to that width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This map flattens the picture to a line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This outline in the layout that is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This outline, its slots and holes in the layout that is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This picture was not laid behind the drawing</source>
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
        <source>This rack is now yours, for all layouts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This rack was not exported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This rack was not imported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This sample was not opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step is spoiled or unsafe where it stands.</source>
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
        <source>Thread the blade through a waste hole and saw out {slot} to within {light} of its line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threaded bushing through the face, cast body on the back, one screw at 45 degrees.</source>
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
        <source>Throat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt beyond the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt of the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of {title}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time the step of the row, for the piece on the bench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timer {hours}:{minutes:02d}:{rest:02d} · {title}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tip end, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tip end, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To fill in with a caliper once the piece is finished: what is measured against the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To put its bearing on the template below it needs {needed} under the base, and {what} only {has}.</source>
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
        <source>Together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few to go by.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools and clamps mark the finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trace the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trace {picture}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Traced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treble slots and tuners, mirrored to the bass side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuned to</source>
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
        <source>Tuners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuners marked “Leave it where it is” stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuners through the face and through the side cannot share a row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuners, bass side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuners, treble side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the head; + and - come closer or step back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the piece over</source>
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
        <source>Turn the wood over, back up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn wood and template over on the same two pins, back up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned over on {used} the template does not come back to its place: they are not mirrored about the centreline. Move them, or have two pins proposed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned over, the template comes back to its place only on pins that are each other's mirror image.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turning the template over needs two locating pins through template and blank: place them first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two bring the template back to the same place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two locating pins where the wood allows them, to take or leave.</source>
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
        <source>Two points a known distance apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two slots share wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a length here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a length, for example 12.5, 12 mm or 1/2".</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a place as two lengths with a semicolon between them, for example 12.5; 40.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a place such as 12.5; 40, a length or an angle; Enter takes it, Enter alone closes the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a place, a length, an angle, or a length and an angle here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a place, the length over both ends, an angle, or a length and an angle here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type how far along the edge the tuner sits, for example 73.9.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type how far along the edge {id} sits, for example 73.9.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type how far the copy lies from the line, above or below zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type into the empty row to add a note. Ctrl+Shift+N on any stage pins one to what is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type into the empty row to add a part. 12.50 and 12,50 are the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type minutes, or 1:30, 1,5 h, 90 s. Enter goes down, Tab goes on; Space in the last column starts or stops the timer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the length of the edge, or the radius of an arc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the length of the slot over its ends, or its width, or the place of the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typed: {told} – Enter takes it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under its margin of {needed}: {chance}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo the last change of your own rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undone: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unnamed layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unplug the router before a bit is changed, tighten the collet, keep both hands on the router, wear eye and ear protection, collect the dust. The manual of the machine and qualified instruction come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsafe here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsafe in this order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work cannot be kept safe: {trouble}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unwise here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unwise in this order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upright bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a slimmer pin or a larger blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual cautions at the drill press and the router.</source>
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
        <source>Wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waste holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waste holes {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Web</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Web is thin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What do you look for?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What follows the template, and what fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What follows the template: a bearing, or without one the bare shank or a guide bush.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is held, or the stage</source>
        <translation>Was gehalten wird, oder der Schritt</translation>
    </message>
    <message>
        <source>What is measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is printed: template, wrap paper, drilling and router cards, lists.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What must I &amp;hold?…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What must I hold?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What must be held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What one side does, the other follows.</source>
        <translation type="unfinished"></translation>
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
        <source>What the piece looks like after each stretch of steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the readings say</source>
        <translation>Was die Messungen sagen</translation>
    </message>
    <message>
        <source>What the shop has: every plan is made with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was paid for has a name of at most {most} letters: this one has {n}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would do it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you call it; plans and cards use this name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whatever rubs on the template: a bearing on the bit, its bare shank, or a guide bush on the router.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel zooms, the middle button or Space shoves. A mark that is let go of near a corner goes onto it, with Alt it stays. Page up and down take the next mark, arrow keys move it (Shift farther, Alt finer).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it is done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where a side bore's axis meets the square edge of the blank. It is not straight across from the seat: the axis runs aslant to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where a string leaves the nut, above the face; it decides the break angle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where a tuner's plate or body lands. A flat plate on a curved edge stands off or rocks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where each slot is narrowest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where string {string} runs</source>
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
        <source>Where the string of {tuner} runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the string winds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the waste is drilled out first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which accuracy is needed where, and what moving a tuner would gain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which accuracy is needed where, and what to move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which side of the post the string comes to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which version this is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why not the other bits ({rejected})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widen the blank, or glue on an ear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widest bit of the rack that passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the new slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the nut</source>
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
        <source>With a bearing on its tip it cannot be lowered into solid wood, and no drill of the rack opens the waste: add a brad point or Forstner bit at least 2 mm slimmer than the slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a bearing on its tip it has to be let into the drilled waste, and {widest} does not go into a hole of {entry}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the bearing on its tip it has to cut the whole {thickness} at once, and its cutting edges are {step}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the bearing on its tip it has to cut the whole {thickness} at once, and the deepest pass that suits it is {step}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the file's own unit, {unit}, the drawing is {sized}: no headstock is that size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the post of {of} in its bore and the plate down on its seat, drill {hole} through the plate and square to it, {diameter} wide, {depth} deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the post of {tuner} in its bore you can see whether its screws fall on the marks before you drill them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the template clamped on centreline and nut line, drill {of} through template and blank, {diameter} wide, on a spoil board; {start}{also}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the waste gone nothing backs the wood between bore and edge, and it can split off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the waste gone the rails spring, and base and clamps have little to stand on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a bit the template has no size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a bush</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without pins nothing brings the template back to the same place from the other side: add two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without pins the template is laid on the marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without {feature} nothing holds the template in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood above and below a side bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood behind the nut line</source>
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
        <source>Wood left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood left standing under a plate keeps it from sitting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood that goes: outside the outline, or inside a slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood that the cutter cannot reach, hatched, with its depth: to be pared by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood, hardware by its dimensions, drills and bits, what the rack lacks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work an edge by hand, 100 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working out the order…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working out the plan…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wound in bronze over a steel core; densities from memory of handbooks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrap paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write DXF, SVG, PDF and tables to a folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write hours, money, notes and readings as a table (CSV).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write that template too, for {names}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the &amp;job book…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the job book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the job book as a table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the sheets into this folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the sheets…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write this plan's template…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write this rack to a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what to do differently at the step of the row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what to do differently, pinned to what is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the sheets…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written into the job book: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to {out}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: {chosen}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: {path}. Check the size on a print or with calipers before the wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your bits, bushes, drills and machines, in place of the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your choice {names} does it on another template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your choice, {names}, no longer does it, so the best other plan is shown.{reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your choice: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your layout is as it was after the last step, and it has been written down as {file}: it is offered at the next start if anything else goes wrong. Go on, and save it soon.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your layout is as it was; it holds nothing that is not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your layout is safe: it is saved as {path}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your layout is still in the window, but it could not be written down: save it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your rack could not be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your rack in {path} cannot be read: {strerror}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your rack was not kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your work is still here in the window, as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom about the pointer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bit for {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a cutter over {corner} leaves wood to pare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fifth of full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a flat along the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a flat {size} long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a folder of that name is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a round spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a round spot {size} wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a way in for the blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a word behind amounts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about 1 in {n:,.0f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {chance}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {n:.0f} in 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across, {along} from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>against the grain</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along the bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along {along}, tilt {tilt}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along {along}, {place}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>angle</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program holds it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any flat waste; goes under every through bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as far apart as the wood allows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>wie es war</translation>
    </message>
    <message>
        <source>as large as the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as saved</source>
        <translation>wie gespeichert</translation>
    </message>
    <message>
        <source>as the drawing says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as you said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis of {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>axis {fence} from the fence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back paper</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back, tip up: the treble side is on the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band saw</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare shank</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bass</source>
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
        <source>bass side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bearing on the shank</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bearing on the tip</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>behind</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>behind the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below that its bearing of {height} leaves the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beside the pin {wide}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beside {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between two holes: far walls, inside jaws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between two holes: over pins that fill them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between two holes: the wood left, outside jaws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bit</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blank</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blank, all edges square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blocks scaled to nothing</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blocks that the file does not hold</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blocks {high} over {base}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore from the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bores from the side: below the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bores from the side: tilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brad</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brad point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>break angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bush</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>card</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>card {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cautions</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre of edge {i} of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centreline</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centreline, tip this way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centreline: closes the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clean up</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance</source>
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
        <source>comes out sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coping saw</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected for this printer: across {across:.3f}, along {along:.3f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>count</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counterbore</source>
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
        <source>curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut in the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut outline</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutters over {corner} leave wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dia.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diameter</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diameter_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dimensions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dimensions</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>direction of the handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>direction of the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>direction_x</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>direction_y</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>direction_z</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>do this differently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag the picture, with Shift turn it about the middle of the nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag to the other end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drill</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drill press</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drill press square to the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drill press, {bit}; {surface} up, the {lies} against the fence.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drill wander</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ear {ear}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ears</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge pilot</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end grain</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal gaps between strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every margin kept: {chance}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>face</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>face and side in turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>features (ears, slots, tuners, pins, holes)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled areas</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>final diameter</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finish</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finished slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first to last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>five times full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>follower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for a pilot of {diameter}, through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for a pilot of {diameter}, {depth} deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>foreign contents</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forstner</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the face, {scale}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from tuner to tuner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {one:,} to {two:,} in {whole:,}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {one} to {two}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {thing}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glue ear</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glue line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glue line of {ear}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grid {length}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>guessed from its size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>guide bush</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half the thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand drill</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handle of the {of}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handle {step}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hardboard or plywood, as large as the blank{more}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hardboard or plywood, {spare} to spare all round{more}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hatches</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hidden shapes</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hole</source>
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
        <source>how</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how square {what} is drilled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the outline is followed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how {slot} is followed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>id</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>impossible</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in later holes or on the centreline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in line with its other end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in line with the edge beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in line with {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in one pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the rack, {remark}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in {n} pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in {n} pass, turned over once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in {n} passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in {n} passes, turned over once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inner wall</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is a folder, a device or a pipe and no file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is nested too deeply.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it stands {stick_out} out of the router and the template takes {template} of that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>item</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its bearing is wider than the cutter and must stay out of the wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its folder is not there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its horizon runs through it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its name is too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its {shank} shank is thicker than the cutter and must stay out of the wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job-book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keeps every margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lacking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaders</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length of the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length {length}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length {length} over the ends, {place}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length {length}, angle {angle}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length {length}, {place}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than 1 in 10,000</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level with its node</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level with {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>list</source>
        <comment>column</comment>
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
        <source>lying</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>machine</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark_x_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark_y_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark_z_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marks of {tuner}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle of edge {i} of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle to middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>midway between {a} and {b}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mirrored about the centreline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mirrors the {end} end of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mirrors {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed tuners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved {across} across, {along} along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearly always</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>node {i} of this line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>node {number} of the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>node {number} of the {of}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>node {number} of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: nothing in the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: the axis never meets that edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: the bore is as wide as the outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not all of it arrived there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not at {mark}, squared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not guided by the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said in its record</source>
        <translation>in den Angaben nicht genannt</translation>
    </message>
    <message>
        <source>not there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing more is taken there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nut</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nut line</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nut line on the centreline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nut, bass end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nut, treble end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>offset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the centreline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the centreline or mirrored about it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the centreline, {along} along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the centreline, {along} from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the shank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the template below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the wall already cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on {edge}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only {length}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open, its walls stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening as large as the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening {by} larger all round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening {by} smaller all round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>openings the same size as the slots, outside the same size as the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>openings {offset} larger all round than the slots, outside {offset} smaller all round than the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>openings {offset} smaller all round than the slots, outside {offset} larger all round than the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>operation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>operation</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opposite {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outer string on the {side} side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outline</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 98 in 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over pins</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the walls</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the wood</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over {n:,} in {whole:,}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page {number} of {all}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page {page}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pages {first} to {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pass {index} of {passes}, {side} up: {bit}</source>
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
        <source>pictures</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>piece</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pilot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pilot</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pin</source>
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
        <source>pin outside, {wide}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pins</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned, min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>points</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>post</source>
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
        <source>practice piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>press and drag to lay a section line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>press on the first thing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>press where one end goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>press where the line begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>press where the {what} goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printed on the cutter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printed paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>radius</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>radius {radius}, length {length}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>radius {radius}, {length}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rail</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raised end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ramp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ramp</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ramp of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>real</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>real piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reamer {diameter:g}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>references to what the file does not hold</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>regions</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>rounded by {depth}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rout</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rout outline</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>routed {deep} of {depth}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>router</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
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
        <source>same step as from {a} to {b}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saved</source>
        <translation>gespeichert</translation>
    </message>
    <message>
        <source>saw</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seat</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>section</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>section of {length}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen from the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>setting up and changing over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shaped like the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shapes on paper pages</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shapes with a broken transform</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shapes with impossible coordinates</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shapes without length</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shapes without line or fill</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sharp: a cutter leaves wood to pare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sharp: every cutter leaves wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shown now</source>
        <translation>jetzt gezeigt</translation>
    </message>
    <message>
        <source>side</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side bore</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side counterbore</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side_up</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slot</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slots</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slower than this router turns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smooth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>solid bodies</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spoil board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spoiled {chance}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spoils the work</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>square to the edge before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>square to {edge}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stands off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stands off {gap}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start_x_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start_y_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start_z_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps of the running order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop {stop}, point {point} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>surface</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>surfaces</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table level, {fence}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table tilt of side bores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table tilted {tilt} ({blocks} of blocks over {base}), {end} end raised, {fence}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tables</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template and following</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template as DXF and SVG, tables as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template below</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template laid on the marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template on its pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template {wide}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>texts</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the best order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bore meets no slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the centre of the {operation}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cutter and its line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk can only be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk refuses it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the drill's wander in {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the drive does not answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the edge of the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the face beside {feature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is protected against writing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file would be larger than that disk allows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the finished edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first node: closes the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fit of the bushing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fit of the template on its pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fit of {tuner}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the glue line of {ear}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hole of {pin}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mark of {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the middle of string {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the name leads round in a circle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the nut end of {opening}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the nut's</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pattern asks for {kind}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pin holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place of the plate of {tuner}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place of the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pricked centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rails beside {feature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ramp of {opening}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the router plunges {plunge} and the template takes {template} of that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sanded surfaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the seat of {feature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the square edge of {feature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the square {edge}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the stop depth of {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the stretch of the {paper}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the system refuses that name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tilt of {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wall already cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wall already cut guides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wall of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the whole head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wood between {feature} and the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wood between {feature} and {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is a folder or a device of that name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>they meet in the wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness of the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thin {chance}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through the {mount}; {bores}; post {diameter}, {length} long, string hole at {string_hole}; seat {before} x {across}; button reaches {reach}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through, on a spoil board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through, {stop} with the point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tight</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilt_degrees</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timed, and no longer in the order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tip</source>
        <comment>of a bit</comment>
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
        <source>title</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to full diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the bass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the treble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>together, {piece}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too fat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>total</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touching {edge}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>treble</source>
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
        <source>treble side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tuner: {pattern}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tuners</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tuners on the bass side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tuners on the treble side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tuners through the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tuners through the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn the template over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>twice</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>twice full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>twist</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>twist drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unbounded lines</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 1 in {n:,}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under the post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undone</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>unit</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unsafe</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unwise</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to {depth}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to {turns:,.0f} turns a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upright</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upright over its node</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use thinner pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use thinner pins, or cut the template from a board as large as the blank and let them stand in the waste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual for its diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>viewports</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall already cut</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
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
        <source>waste</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waste holes</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waste sawn out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>web</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>web</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>white page backgrounds</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of the nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width_mm</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wood</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wood screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>words</source>
        <comment>column</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrap paper</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written</source>
        <translation>geschrieben</translation>
    </message>
    <message>
        <source>wrong here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>x from the bass edge of the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>x from the centreline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>x from the treble edge of the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>x, below face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>y from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>you have no right to write there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your own order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your share of the disk is used up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{across} across to the bass, {along} along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{across} across to the treble, {along} along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{across} to the bass side, {along} from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{across} to the bass side, {along} from the nut line.</source>
        <translation>{across} zur Bassseite, {along} vom Sattel.</translation>
    </message>
    <message>
        <source>{across} to the treble side, {along} from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{across} to the treble side, {along} from the nut line.</source>
        <translation>{across} zur Diskantseite, {along} vom Sattel.</translation>
    </message>
    <message>
        <source>{across}, on the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{across}, {along} behind the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{across}, {along} from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{angle:.1f} degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{apart} apart, {why}: the template turns over on them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{apart} apart, {why}; the template stays face up, so they need not be mirrored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{area} in {n} place, up to {depth} deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{area} in {n} places, up to {depth} deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{at} keeps {area} mm2 of wood in corners tighter than the {cutter} mm cutter, up to {depth} mm deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{at} of {of}</source>
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
        <source>{bit} in {bush}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} reaches {a} of {b} mm in {opening}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} standing {out} below the router's base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} with a bearing {high} high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} with a cutting length of {length}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} with a cutting length of {length}, standing {stick_out} below the router's base, would, {done}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} with a shank of {shank}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} with {bush}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit} would, {done}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit}: at most {most:,.0f} turns a minute ({source}), and the router's slowest setting is {slowest:,.0f}: do not run it in this router.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit}: at most {most:,.0f} turns a minute ({source}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bit}: set {setting:,.0f} turns a minute, rim speed {rim_speed}; at most {most:,.0f} ({source}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{board}: opening the same size as the finished slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{board}: opening {by} larger all round than the finished slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{board}: opening {by} smaller all round than the finished slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{board}: outside template the same size as the finished outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{board}: outside template {by} larger all round than the finished outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{board}: outside template {by} smaller all round than the finished outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bush} stands {length} out of the base, more than the {template} template is thick, so the base would not sit down: take a thicker template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{by} a slip?</source>
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
        <source>{cause} ({share:.0f} %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{chance} (all of {trials:,} tried)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{chance} (none of {trials:,} tried)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{chance} (none seen in {trials:,})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{changes} changes of machine, bit, table or side: no order needs fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{changes} changes of machine, bit, table or side; none can do with fewer than {bound}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{changes} changes of machine, bit, table or side; the best order has {total}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cutter} shank-bearing bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cutter} straight bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cutter} tip-bearing bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{depth} deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{depth}, through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{diameter} follower, {cutter} cutter, offset {offset}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{diameter} steel or dowel, as long as blank and template are thick together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{diameter} through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{diameter} to {depth}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{diameter} {follower} with a {cutter} cutter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{diameter}, tilt {tilt}, stop {stop}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{diameter}, {depth}, from the {surface}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{drill} {diameter}, not in the rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{d} goes in from the side: measure y and how far below the face it lies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{d} is square to the face: it has neither a tilt nor a depth below the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{edge} edge of the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{end} end of the nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{end} end of {slot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{far} apart in the wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{far} from {one} to {two}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{far} to the bass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{far} to the treble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{feature} has no place: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{fence} to the axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} is no layout, no drawing (DXF, SVG) and no picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} before {then}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{grade}: {kind}. {sentence}</source>
        <translation>{grade}: {kind}. {sentence}</translation>
    </message>
    <message>
        <source>{harm}, out of turn with {names}</source>
        <translation type="unfinished"></translation>
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
        <source>{here}, not {there}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{holes} for the waste, deepest {deep}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{holes} holes · {drilling} drilling operations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{holes} in {drillings} drillings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{holes}{more}, deepest {deep}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hole} has no mark on the square edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hole} is {stop} deep, the drill {drill} is {length} long: find a longer one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hole} lies {nearest} from the nearest edge of the blank, the drill press has a throat of {throat}: drill it by hand with a guide.</source>
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
        <source>{lengths}; {bass} to the bass side, {treble} to the treble side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{length} at {angle}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{length} mm long and {depth} mm deep ({angle:.1f} degrees)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{length}, radius {radius}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{made} of {all} drillings made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mark} below the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mark} from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mark}: {x} points from the left, {y} from the top.</source>
        <translation>{mark}: {x} Punkte von links, {y} von oben.</translation>
    </message>
    <message>
        <source>{measured} of {needed}</source>
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
        <source>{n:,} in {whole:,}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{names} and {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{names} and {n} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} (not saved)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} and {n} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} breaks through the {side} by {measured} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} cannot be made small enough to keep: use a smaller picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} cannot be used: {sentence}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} comes out of the {side} by {measured} mm{to_point}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} has changes that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} has {width} x {height} points, more than can be read here: save it with a longer side of about {longest} points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is a layout of version {version}; this program reads version {format}. Update Pegwright to open it; the file is left as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is a list of printers of version {version}; this program reads version {known}. Update Pegwright to open it; the file is left as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is a rack of version {version}; this program reads version {known}. Update Pegwright to open it; the file is left as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is damaged: there has never been a layout of the version that it names.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is damaged: there has never been a list of printers of the version that it names.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is damaged: there has never been a rack of the version that it names.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is empty: it holds no layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is empty: it holds no printers. Delete it and measure the bars again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is empty: it holds no rack. Delete it to begin with the starting rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is far larger than a list of printers: choose the right file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is far larger than a rack needs: choose the right file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is not a headstock layout: it has no "pegwright" version at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is not a headstock layout: {sentence}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is not a list of printers: it has no "pegwright_printers" version at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is not a rack: it has no "pegwright_rack" version at the top.</source>
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
        <source>{name} is there already. Its present version would be kept beside it as the version before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is {data:.0f} MB, far more than a layout needs: choose the right file.</source>
        <translation type="unfinished"></translation>
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
        <source>{name} was written by another program after it was opened here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} – not there now</source>
        <translation>{name} – zurzeit nicht da</translation>
    </message>
    <message>
        <source>{name}. Hours are planned from common rates (common practice, no source); write down what it took, and the next plan is better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: template, 1 unit = 1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{nodes} nodes, {corners} of them corners. The line and the edge in the picture stray by no more than {far} anywhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} of {all}: {title}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} counterbore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} counterbores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} drilling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} drillings</source>
        <translation type="unfinished"></translation>
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
        <source>{n} filled shape was open and closed with a straight line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} filled shapes were open and closed with a straight line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} gap was closed with a short straight piece, the widest {size:.3f} mm at ({x:.2f}, {y:.2f}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} gaps were closed with a short straight piece, the widest {size:.3f} mm at ({x:.2f}, {y:.2f}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} holes of {diameter}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} line stays open: it belongs to no loop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} line stays open; loose ends are apart by {places}: join them in the drawing, or import with a larger gap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} line that encloses nothing of its own was left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} lines stay open: they belong to no loop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} lines stay open; loose ends are apart by {places}: join them in the drawing, or import with a larger gap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} lines that enclose nothing of its own were left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} locating pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} locating pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} of {diameter}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} page of {paper} sent to {name}, at 100 %, not corrected: measure the bars.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} page of {paper} sent to {name}, {correction}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} pages of {paper} sent to {name}, at 100 %, not corrected: measure the bars.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} pages of {paper} sent to {name}, {correction}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} piece was drawn twice and counted once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} pieces were drawn twice and counted once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} readings are so far off that a slip of the pen is likelier; left out below: {which}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} screw pilots later (steps {steps}): by hand through the plate once the outline is finished, {holes}.</source>
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
        <source>{n} spoil the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} spoils the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} table setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} table settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} templates are needed, with offsets of {offsets}.</source>
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
        <source>{n} tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} tilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} tilts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} tuners in a row, {pitch:g} mm apart, take a blank {long:g} mm long from the nut line; this one is {length:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} tuners in a row, {pitch:g} mm apart, take a blank {long:g} mm long from the nut line; this one is {length:g} mm: make it longer, or set them {nearer:g} mm apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} waste holes drilled</source>
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
        <source>{of} needs a tilt of {tilt}, the table of the drill press tilts to {most}: move the tuner or make a wedge.</source>
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
        <source>{one} comes after {two}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} comes before {two}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} cuts {measured} mm into the {two}; {needed} mm of wood wanted between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} like {bit}</source>
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
        <source>{one} to {other}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} to {other}, {how}: {value}{planned}</source>
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
        <source>{operations} steps, {holes} holes in {drillings} drillings, {set_ups} set-ups at machines, {changes} of machine, bit, table or side, {tilts} for bores from the side; about {total:.1f} hours (common practice, no source).{found} {how}{own}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{operation} {diameter} through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{operation} {diameter} to {depth}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{outer} and {inner} to spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{own} leaves {a} mm below the post of {item}; {b} mm wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{part}: {one} and {other} are {by} too far apart, the play is {play}: the part does not go on as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{part}: {one} and {other} are {by} too near, the play is {play}: the part does not go on as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{paths} files written to {folder}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} cannot be read: {strerror}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} cannot be read: {why}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} cannot be renamed: {strerror}. Move it yourself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} cannot be written: {why}. Choose another place; a file that was there before is untouched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} claims to be far larger than any camera's picture: save a smaller one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is damaged: save the picture again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is no picture that can be read: save it as JPEG or PNG.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is {st_size:.0f} MB: save a smaller picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} %</source>
        <translation>{percent} %</translation>
    </message>
    <message>
        <source>{pins} pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{pin} goes with the waste, and the template no longer finds its place on the slots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{pin} lies outside the template, so it cannot hold it: cut the template from a board as large as the blank, or move the pin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{pitch:g} mm from tuner to tuner is too little for {words}: their plates and buttons need {least:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{pitch:g} mm from tuner to tuner makes a head nobody can hold: {most:g} mm is the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{places} and {n} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{printername} does not take {paper}: choose another paper for the sheets, or another printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{printername} takes no pages: look whether it is switched on and connected, or print to a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{question}; give the unit: {sizes}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{reach} of {depth}: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{readout} seen from the face, {space}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{right} of {pairs} pairs of joined holes take their part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{row}, number {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{scale} of full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{setting:,.0f} turns a minute, rim {rim}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{side} side, from {low} to {high} from the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{side} up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{side} up, nut to the left, {scale}; dashed heavy: go carefully</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{size:.3f} mm at ({x:.2f}, {y:.2f})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{slots}, each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{slot} from the face, {scale}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{slot} is too narrow to drill the waste out: {width}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sort} of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{spoiling}, {tight} tight, {notes}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{spoils} spoil the work, {tight} tight, {notes} notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{steps} steps are spoiled or unsafe where they stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{steps} steps · {holes} holes · {set_ups} set-ups · {tilts}
about {hours:.1f} hours, {changes:.1f} of them setting up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stop} deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stop} to full diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stop} to the point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stop}, point {point}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{strings} strings cannot stand in pairs: give the {side} side one more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{strings} strings on a nut {nut_width:g} mm wide stand too close: it takes {least:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} (seen to)</source>
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
        <source>{text} is not a number of parts: write for example 12.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not a percentage: write for example 0.2 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not a time: write minutes, for example 25, or 1:30, or 1.5 h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not an amount of money: write for example 12.50 or 12,50.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not an angle: write degrees, for example 14.5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not understood here: type a length, or two with a semicolon between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} may be read two ways: write {whole}{part} or {whole}.{part}0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{thin} to {thick}, {one} strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{tilt} {end} raised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{tilt}, block {block}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{tilt}, {end} end raised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{tip} from the nut line to the tip, {behind} behind it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{tip} from the nut line to the tip; the neck goes on behind the nut line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title} comes {n} times in the order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title} is left out of the order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title} – no bit does it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title}, row {row} of {rows} from the nut, column {column} of {columns} from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title}: do this differently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title}: plus or minus {half_width} (95 times in 100 the truth lies from {low} to {high}), from {n} readings; the layout holds {held}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title}: {name}, 1 unit = 1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{tuners} tuners, {slots} slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{tuner} (card {card})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{turned} with the blank turned over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{turns:,.0f} turns a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{unit_words} and degrees. x, y, z: the mark on the square blank. stop: drill depth from the mark to full diameter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{up}, {follower}{only}: from {begins} to {ends} deep, {contact} of the {what} rubbing {on}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{up}, {guide}: rout the corners of {what} with {bit} to {deep} {steps}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{up}, {guide}: rout {what} with {bit} to {deep} {steps}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{up}: drill the {what}, {diameter} wide, {how}; {start}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{user} uses the hardware {id}: give its tuners other hardware first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} (Alt+{number})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} rubs {contact} on the {rubs_on}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}: do this differently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{wide} wide, {deep} deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{width} wide, {height} high, {spread} from the first string to the last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{wrap} wide, folds round both edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{x} across, {y} along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>±{far} in {length}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{name}” was not saved when the program ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{text}” cannot be: this measure is above zero.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
