<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Pegwright</name>
    <message>
        <source>, and mirrored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; the drawing was turned by {degrees:.1f} degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A field needs a path to it.</source>
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
        <source>A place needs two finite numbers, x and y in mm.</source>
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
        <source>A side is copied to the other side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A slot needs a width above zero, got {width:g} mm.</source>
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
        <source>As the &amp;system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both edges at this node are arcs and cannot turn into line: make one of them a curve first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one loop as the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear {id} belongs to the blank and is not copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Features are aligned along x or y, not {axis}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flat of {id}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From an imported drawing.</source>
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
        <source>No picture lies behind the drawing: lay one there first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No straight edge at the end could be the nut line: the lowest point and the middle of the outline were taken{turned}.</source>
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
        <source>Ramp of {id}</source>
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
        <source>That set has {chosen} strings, the layout has {strings}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The choice</source>
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
        <source>The face lies between the sheet and the camera.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first and the last tuner stand on one place: move them apart before making a row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The four corners do not run round a rectangle: put them in order, one at each corner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hardware {id} needs at least one bore.</source>
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
        <source>The line must cross the centreline at two levels before one side can be mirrored.</source>
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
        <source>The name {new} is kept for the {new} itself: choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name {value} is taken: choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The nodes are {apart:.2f} mm apart, so the radius must be {half:.2f} mm or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outline crosses itself at {x:.1f} across, {y:.1f} along.</source>
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
        <source>The outline measures {width:.0f} x {height:.0f} mm, far more than a headstock: give the right unit.</source>
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
        <source>The rack holds nothing named {id}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rectangle needs a width and a height above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The straight edge of {width:.1f} mm at one end was taken for the nut line and its middle for the centreline{turned}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strings of {id} clear its nut end: it needs no ramp.</source>
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
        <source>The way along an edge is a finite number of mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {keep} half strays over the centreline, so it cannot be mirrored: move its nodes to their own side first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a node at this place already.</source>
        <translation type="unfinished"></translation>
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
        <source>There is nothing to rename in {group}.</source>
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
        <source>To spread tuners evenly takes at least three of them.</source>
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
        <source>Type a length, for example 12.5, 12 mm or 1/2".</source>
        <translation type="unfinished"></translation>
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
        <source>counterbore</source>
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
        <source>nut</source>
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
        <source>pin hole</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>post bore</source>
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
        <source>screw</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw pilot</source>
        <comment>term</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side bore</source>
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
        <source>tip</source>
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
