<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Pegwright</name>
    <message>
        <source> The one before it is in {before}.</source>
        <translation> Der vorige liegt in {before}.</translation>
    </message>
    <message>
        <source> Two boards: one as large as the blank for openings and pins, another for the outside line.</source>
        <translation> Zwei Bretter: eines so groß wie der Rohling für Öffnungen und Stifte, eines für die äußere Linie.</translation>
    </message>
    <message>
        <source>"{word}" and what is typed before it are one measure: type it once.</source>
        <translation>„{word}“ und was davor steht, sind ein Maß: einmal eingeben.</translation>
    </message>
    <message>
        <source>"{word}" is not understood here: use {words} or {last}.</source>
        <translation>„{word}“ wird hier nicht verstanden: {words} oder {last} verwenden.</translation>
    </message>
    <message>
        <source>&amp;Actions and words…</source>
        <translation>&amp;Befehle und Begriffe…</translation>
    </message>
    <message>
        <source>&amp;Chances on the drawing</source>
        <translation>&amp;Aussichten in der Zeichnung</translation>
    </message>
    <message>
        <source>&amp;Clear this list</source>
        <translation>Diese Liste &amp;leeren</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Copy treble to bass</source>
        <translation>&amp;Diskant auf Bass kopieren</translation>
    </message>
    <message>
        <source>&amp;Correct a printer…</source>
        <translation>Einen Drucker &amp;korrigieren…</translation>
    </message>
    <message>
        <source>&amp;Daylight</source>
        <translation>&amp;Tageslicht</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>&amp;Verdoppeln</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Fainter</source>
        <translation>Sch&amp;wächer</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>&amp;Raster</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Import a drawing…</source>
        <translation>Eine Zeichnung ein&amp;lesen…</translation>
    </message>
    <message>
        <source>&amp;Lamplight</source>
        <translation>&amp;Lampenlicht</translation>
    </message>
    <message>
        <source>&amp;Larger letters</source>
        <translation>&amp;Größere Schrift</translation>
    </message>
    <message>
        <source>&amp;Layout</source>
        <translation>&amp;Entwurf</translation>
    </message>
    <message>
        <source>&amp;Left-handed mirror</source>
        <translation>&amp;Linkshändig spiegeln</translation>
    </message>
    <message>
        <source>&amp;Locked</source>
        <translation>Ges&amp;perrt</translation>
    </message>
    <message>
        <source>&amp;Millimetres</source>
        <translation>&amp;Millimeter</translation>
    </message>
    <message>
        <source>&amp;Move it by hand</source>
        <translation>Von &amp;Hand versetzen</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Neu…</translation>
    </message>
    <message>
        <source>&amp;Next thing</source>
        <translation>&amp;Nächstes Teil</translation>
    </message>
    <message>
        <source>&amp;Offset…</source>
        <translation>&amp;Versatz…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Panel beside the drawing</source>
        <translation>&amp;Tafel neben der Zeichnung</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>E&amp;infügen</translation>
    </message>
    <message>
        <source>&amp;Picture</source>
        <translation>B&amp;ild</translation>
    </message>
    <message>
        <source>&amp;Print the sheets…</source>
        <translation>Die Blätter &amp;drucken…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Row on a line</source>
        <translation>&amp;Reihe auf einer Linie</translation>
    </message>
    <message>
        <source>&amp;Safety</source>
        <translation>&amp;Sicherheit</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>&amp;Shown</source>
        <translation>&amp;Gezeigt</translation>
    </message>
    <message>
        <source>&amp;Smaller letters</source>
        <translation>&amp;Kleinere Schrift</translation>
    </message>
    <message>
        <source>&amp;Solid beside the drawing</source>
        <translation>Rä&amp;umlich neben der Zeichnung</translation>
    </message>
    <message>
        <source>&amp;Spread on a line</source>
        <translation>Auf einer &amp;Linie verteilen</translation>
    </message>
    <message>
        <source>&amp;The same for all alike</source>
        <translation>&amp;Dasselbe für alle gleichen</translation>
    </message>
    <message>
        <source>&amp;Trace the picture…</source>
        <translation>Das Bild &amp;nachziehen…</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Whole headstock</source>
        <translation>Ganze &amp;Kopfplatte</translation>
    </message>
    <message>
        <source>&amp;Write the sheets…</source>
        <translation>Die Blätter ausg&amp;eben…</translation>
    </message>
    <message>
        <source>(and {n} more)</source>
        <translation>(und {n} weitere)</translation>
    </message>
    <message>
        <source>(entries of the book have a button of their own)</source>
        <translation>(für Einträge des Werkbuchs gibt es einen eigenen Knopf)</translation>
    </message>
    <message>
        <source>(in the real piece already, and drawn otherwise now: {names})</source>
        <translation>(schon im echten Stück, und jetzt anders gezeichnet: {names})</translation>
    </message>
    <message>
        <source>(line {line}, column {column})</source>
        <translation>(Zeile {line}, Spalte {column})</translation>
    </message>
    <message>
        <source>({depth} from the seat)</source>
        <translation>({depth} ab dem Sitz)</translation>
    </message>
    <message>
        <source>({x:.2f}, {y:.2f})</source>
        <translation>({x:.2f}; {y:.2f})</translation>
    </message>
    <message>
        <source>, and mirrored</source>
        <translation>, und gespiegelt</translation>
    </message>
    <message>
        <source>, back</source>
        <translation>, hinten</translation>
    </message>
    <message>
        <source>, in a corner</source>
        <translation>, in einer Ecke</translation>
    </message>
    <message>
        <source>, in the corners only</source>
        <translation>, nur in den Ecken</translation>
    </message>
    <message>
        <source>, in two bores to come</source>
        <translation>, in zwei künftigen Bohrungen</translation>
    </message>
    <message>
        <source>, layer {layer}</source>
        <translation>, Ebene {layer}</translation>
    </message>
    <message>
        <source>, one in a bore to come</source>
        <translation>, einer in einer künftigen Bohrung</translation>
    </message>
    <message>
        <source>, or </source>
        <translation>, oder </translation>
    </message>
    <message>
        <source>, planned {length}</source>
        <translation>, geplant {length}</translation>
    </message>
    <message>
        <source>, plug the pin hole {pins}</source>
        <translation>, das Stiftloch verschließen ({pins})</translation>
    </message>
    <message>
        <source>, plug the pin holes {pins}</source>
        <translation>, die Stiftlöcher verschließen ({pins})</translation>
    </message>
    <message>
        <source>, the back paper to centreline and {line} squared round</source>
        <translation>, den Rückbogen auf Mittellinie und herumgewinkelte {line}</translation>
    </message>
    <message>
        <source>, the last in the corners</source>
        <translation>, der letzte in den Ecken</translation>
    </message>
    <message>
        <source>, then </source>
        <translation>, dann </translation>
    </message>
    <message>
        <source>, to the drill's point</source>
        <translation>, bis zur Bohrerspitze</translation>
    </message>
    <message>
        <source>, too fast</source>
        <translation>, zu schnell</translation>
    </message>
    <message>
        <source>, turned over</source>
        <translation>, gewendet</translation>
    </message>
    <message>
        <source>, turned over once</source>
        <translation>, einmal gewendet</translation>
    </message>
    <message>
        <source>, {depth} below the face</source>
        <translation>, {depth} unter der Vorderseite</translation>
    </message>
    <message>
        <source>, {depth} to pare</source>
        <translation>, {depth} nachzustechen</translation>
    </message>
    <message>
        <source>, {n} flip</source>
        <translation>, {n}-mal gewendet</translation>
    </message>
    <message>
        <source>, {n} flips</source>
        <translation>, {n}-mal gewendet</translation>
    </message>
    <message>
        <source>, {n} of them waste holes</source>
        <translation>, davon {n} Räumbohrungen</translation>
    </message>
    <message>
        <source>, {n} table setting for bores from the side</source>
        <translation>, {n} Tischeinstellung für Bohrungen von der Seite</translation>
    </message>
    <message>
        <source>, {n} table settings for bores from the side</source>
        <translation>, {n} Tischeinstellungen für Bohrungen von der Seite</translation>
    </message>
    <message>
        <source>, {spacing} from centre to centre</source>
        <translation>, {spacing} von Mitte zu Mitte</translation>
    </message>
    <message>
        <source>--unit {name} makes it {sized}</source>
        <translation>--unit {name} ergibt {sized}</translation>
    </message>
    <message>
        <source>... (whole in the job book)</source>
        <translation>... (ganz im Werkbuch)</translation>
    </message>
    <message>
        <source>1 in {n:,}</source>
        <translation>1 von {n:,}</translation>
    </message>
    <message>
        <source>1. Its size</source>
        <translation>1. Seine Größe</translation>
    </message>
    <message>
        <source>1:30 narrows by 1 mm over 30 mm. The reamer has to have the taper of the peg.</source>
        <translation>1:30 wird auf 30 mm um 1 mm enger. Die Reibahle muss die Verjüngung des Wirbels haben.</translation>
    </message>
    <message>
        <source>1:{taper:g}</source>
        <translation>1:{taper:g}</translation>
    </message>
    <message>
        <source>2. Its place</source>
        <translation>2. Sein Platz</translation>
    </message>
    <message>
        <source>; it is the {operation} of {of} too</source>
        <translation>; zugleich {operation} von {of}</translation>
    </message>
    <message>
        <source>; string {other} comes too near as well</source>
        <translation>; Saite {other} kommt ebenfalls zu nahe</translation>
    </message>
    <message>
        <source>; strings {others} come too near as well</source>
        <translation>; Saiten {others} kommen ebenfalls zu nahe</translation>
    </message>
    <message>
        <source>; the drawing was turned by {degrees:.1f} degrees</source>
        <translation>; die Zeichnung wurde um {degrees:.1f} Grad gedreht</translation>
    </message>
    <message>
        <source>; the plans need {n} of them, with offsets of {offsets}</source>
        <translation>; die Pläne brauchen {n} davon, mit Versatz {offsets}</translation>
    </message>
    <message>
        <source>; {n} other pair lies too near as well</source>
        <translation>; {n} anderes Paar liegt ebenfalls zu dicht</translation>
    </message>
    <message>
        <source>; {n} other pairs lie too near as well</source>
        <translation>; {n} andere Paare liegen ebenfalls zu dicht</translation>
    </message>
    <message>
        <source>A CSV file that a spreadsheet opens.</source>
        <translation>Eine CSV-Datei, die eine Tabellenkalkulation öffnet.</translation>
    </message>
    <message>
        <source>A bare blank with nut and strings, the pencil in hand.</source>
        <translation>Ein leerer Rohling mit Sattel und Saiten, den Stift in der Hand.</translation>
    </message>
    <message>
        <source>A bare shank on the wall burns it when it stands still: keep it moving.</source>
        <translation>Ein blanker Schaft brennt an der Wand, wenn er stillsteht: in Bewegung halten.</translation>
    </message>
    <message>
        <source>A bit of your rack is being looked for to make the template with.</source>
        <translation>In Ihrem Bestand wird ein Fräser gesucht, mit dem die Schablone gemacht wird.</translation>
    </message>
    <message>
        <source>A blank {thickness} thick is too thin for {words}: it takes {thin}.</source>
        <translation>Ein Rohling von {thickness} Dicke ist zu dünn für {words}: nötig sind {thin}.</translation>
    </message>
    <message>
        <source>A blind bore has to leave wood at its bottom.</source>
        <translation>Eine Sackbohrung muss am Grund Holz stehen lassen.</translation>
    </message>
    <message>
        <source>A blind slot has to go below the post.</source>
        <translation>Ein nicht durchgehender Schlitz muss tiefer reichen als die Welle.</translation>
    </message>
    <message>
        <source>A board as large as the blank holds the inside openings; one shaped like the head guides the outline.</source>
        <translation>Ein Brett so groß wie der Rohling hat die inneren Öffnungen; eines in Form der Kopfplatte führt den Umriss.</translation>
    </message>
    <message>
        <source>A button behind the head needs room beyond its edge.</source>
        <translation>Ein Flügel hinter der Kopfplatte braucht Platz jenseits der Kante.</translation>
    </message>
    <message>
        <source>A closed line crosses itself at ({x:.2f}, {y:.2f}); it was taken apart there.</source>
        <translation>Eine geschlossene Linie kreuzt sich bei ({x:.2f}; {y:.2f}); sie wurde dort zerlegt.</translation>
    </message>
    <message>
        <source>A copy of the sample is open; the sample stays. Saving asks for a place.</source>
        <translation>Eine Kopie des Beispiels ist offen; das Beispiel bleibt. Beim Speichern wird nach einem Ort gefragt.</translation>
    </message>
    <message>
        <source>A cost needs a word for what was paid for.</source>
        <translation>Ausgaben brauchen ein Wort dafür, was bezahlt wurde.</translation>
    </message>
    <message>
        <source>A currency is a word of at most 12 letters.</source>
        <translation>Eine Währung ist ein Wort aus höchstens 12 Buchstaben.</translation>
    </message>
    <message>
        <source>A curve is so long that it would take {count:,} straight pieces to follow it: check the unit of the drawing.</source>
        <translation>Eine Kurve ist so lang, dass es {count:,} gerade Stücke bräuchte, um ihr zu folgen: die Einheit der Zeichnung prüfen.</translation>
    </message>
    <message>
        <source>A disc, wing or bar on a screw that holds strings down where they bend too little over the nut.</source>
        <translation>Eine Scheibe, ein Flügel oder Steg an einer Schraube, der Saiten niederhält, die über dem Sattel zu wenig abknicken.</translation>
    </message>
    <message>
        <source>A distance is between two different holes.</source>
        <translation>Ein Abstand liegt zwischen zwei verschiedenen Bohrungen.</translation>
    </message>
    <message>
        <source>A drawing, a picture or a layout may also be dropped here.</source>
        <translation>Zeichnung, Bild oder Entwurf können auch hier abgelegt werden.</translation>
    </message>
    <message>
        <source>A drill skates beyond</source>
        <translation>Neigung, ab der ein Bohrer wegrutscht</translation>
    </message>
    <message>
        <source>A drill that enters at an angle slides off before it bites.</source>
        <translation>Ein schräg angesetzter Bohrer rutscht weg, bevor er greift.</translation>
    </message>
    <message>
        <source>A drill wanders along a glue line, and the joint is weakened.</source>
        <translation>Ein Bohrer verläuft entlang einer Leimfuge, und die Verbindung wird geschwächt.</translation>
    </message>
    <message>
        <source>A drill wanders where its point or its rim finds no wood, and the cutter tears the rim of an open hole.</source>
        <translation>Ein Bohrer verläuft, wo Spitze oder Rand kein Holz finden, und der Fräser reißt den Rand eines offenen Lochs aus.</translation>
    </message>
    <message>
        <source>A drill's point runs ahead of its full diameter, and takes wood beyond the depth that is asked for.</source>
        <translation>Die Bohrerspitze läuft dem vollen Durchmesser voraus und nimmt Holz unter der verlangten Tiefe weg.</translation>
    </message>
    <message>
        <source>A fault in Pegwright</source>
        <translation>Ein Fehler in Pegwright</translation>
    </message>
    <message>
        <source>A fault of the program came again; your layout is kept.</source>
        <translation>Ein Fehler des Programms kam erneut; Ihr Entwurf ist aufbewahrt.</translation>
    </message>
    <message>
        <source>A field needs a path to it.</source>
        <translation>Ein Feld braucht einen Pfad dorthin.</translation>
    </message>
    <message>
        <source>A flat plate on a curved edge rocks or bridges: cut a flat for it.</source>
        <translation>Eine ebene Platte auf gebogener Kante kippelt oder liegt hohl: eine Fläche dafür ausarbeiten.</translation>
    </message>
    <message>
        <source>A flat runs along the edge under the plate; a round spot is cut with a Forstner bit.</source>
        <translation>Eine Fläche läuft unter der Platte an der Kante entlang; eine runde Stelle schneidet ein Forstnerbohrer.</translation>
    </message>
    <message>
        <source>A flat takes wood from the rail that carries the tuner.</source>
        <translation>Eine Fläche nimmt Holz von der Wange, die die Mechanik trägt.</translation>
    </message>
    <message>
        <source>A head that has its outline already and is to have other tuners: tick the steps that saw and rout the outline first, in the order, and papers, pictures and steps are those of such a head. Say of old holes that they are there, and which are plugged first.</source>
        <translation>Eine Kopfplatte, die ihren Umriss schon hat und andere Mechaniken bekommen soll: in der Folge zuerst die Schritte abhaken, die den Umriss sägen und fräsen; Papiere, Bilder und Schritte sind dann die einer solchen Kopfplatte. Von alten Löchern angeben, dass sie schon da sind und welche zuerst verschlossen werden.</translation>
    </message>
    <message>
        <source>A head {thickness} thick is too much for {words}: {most} is the most.</source>
        <translation>Eine Kopfplatte von {thickness} Dicke ist zu viel für {words}: höchstens {most}.</translation>
    </message>
    <message>
        <source>A hole or slot that ends inside the wood; the opposite of through.</source>
        <translation>Eine Bohrung oder ein Schlitz, der im Holz endet; das Gegenteil von durchgehend.</translation>
    </message>
    <message>
        <source>A hole that a drill makes, given by where its axis enters, its direction, its diameter and its depth.</source>
        <translation>Ein gebohrtes Loch, gegeben durch Eintritt der Achse, Richtung, Durchmesser und Tiefe.</translation>
    </message>
    <message>
        <source>A hole that is in the real piece, by the job book, stays where and as it was drilled.</source>
        <translation>Ein Loch, das laut Werkbuch im echten Stück ist, bleibt, wo und wie es gebohrt wurde.</translation>
    </message>
    <message>
        <source>A layout from a few numbers</source>
        <translation>Ein Entwurf aus wenigen Zahlen</translation>
    </message>
    <message>
        <source>A lens bends straight lines most near the rim, so keep the head in the middle and the camera far away. Sheet or ruler must lie as high as the face: {lower} lower, seen from {far}, makes the head 2 % too large. A camera that is 5 degrees off the square costs 0.4 % with two points, nothing with four corners. Check what you print with the 100 mm bar and the head itself with a rule.</source>
        <translation>Ein Objektiv biegt gerade Linien am Rand am stärksten: die Kopfplatte in der Mitte halten und die Kamera weit weg. Blatt oder Maßstab müssen so hoch wie die Vorderseite liegen: {lower} tiefer, aus {far} gesehen, macht die Kopfplatte 2 % zu groß. Eine um 5 Grad verkippte Kamera kostet bei zwei Punkten 0,4 %, bei vier Ecken nichts. Den Druck mit dem 100-mm-Balken und die Kopfplatte selbst mit dem Maßstab prüfen.</translation>
    </message>
    <message>
        <source>A line</source>
        <translation>Eine Linie</translation>
    </message>
    <message>
        <source>A line goes round within the outline, near its edge, and was left out: see which of the two is the edge of the wood.</source>
        <translation>Eine Linie läuft innerhalb des Umrisses nahe an seinem Rand herum und wurde ausgelassen: sehen, welche von beiden der Rand des Holzes ist.</translation>
    </message>
    <message>
        <source>A line that crosses itself encloses no head.</source>
        <translation>Eine Linie, die sich selbst kreuzt, umschließt keine Kopfplatte.</translation>
    </message>
    <message>
        <source>A locked picture is not moved by the hand.</source>
        <translation>Ein gesperrtes Bild wird von der Hand nicht versetzt.</translation>
    </message>
    <message>
        <source>A loop needs at least two nodes, so this one stays.</source>
        <translation>Eine geschlossene Linie braucht mindestens zwei Knoten, dieser bleibt.</translation>
    </message>
    <message>
        <source>A model with the figures for the shop that stand in the Blank stage: it knows nothing of slips, knots or a slipping vice.</source>
        <translation>Ein Modell mit den Zahlen für die Werkstatt, die im Bereich Rohling stehen: von Schnitzern, Ästen oder einem rutschenden Schraubstock weiß es nichts.</translation>
    </message>
    <message>
        <source>A model, with the shop's figures of the Blank stage</source>
        <translation>Ein Modell, mit den Werkstattzahlen im Bereich Rohling</translation>
    </message>
    <message>
        <source>A new headstock</source>
        <translation>Eine neue Kopfplatte</translation>
    </message>
    <message>
        <source>A new layout around this outline</source>
        <translation>Ein neuer Entwurf um diesen Umriss</translation>
    </message>
    <message>
        <source>A new node in the edge after the node that is held</source>
        <translation>Ein neuer Knoten in der Kante nach dem gehaltenen</translation>
    </message>
    <message>
        <source>A new node lies between the ends of its edge.</source>
        <translation>Ein neuer Knoten liegt zwischen den Enden seiner Kante.</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Eine Notiz</translation>
    </message>
    <message>
        <source>A note has at most {most:,} letters: this one has {n:,}. Write it in two.</source>
        <translation>Eine Notiz hat höchstens {most:,} Zeichen, diese hat {n:,}. Auf zwei verteilen.</translation>
    </message>
    <message>
        <source>A note needs some words; strike it out instead when there is nothing to say.</source>
        <translation>Eine Notiz braucht ein paar Worte; gibt es nichts zu sagen, streichen Sie sie.</translation>
    </message>
    <message>
        <source>A note such as E2 or F#3: with it the pull is worked out.</source>
        <translation>Ein Ton wie E2 oder F#3: damit wird der Zug berechnet.</translation>
    </message>
    <message>
        <source>A nut line is slanted by {most:g} degrees at the most.</source>
        <translation>Eine Sattellinie ist um höchstens {most:g} Grad schräg.</translation>
    </message>
    <message>
        <source>A nut line {length} from the tip does not cross the neck.</source>
        <translation>Eine Sattellinie {length} hinter der Spitze kreuzt den Hals nicht.</translation>
    </message>
    <message>
        <source>A nut line {length} from the tip leaves no headstock: that is {least} long at the least.</source>
        <translation>Eine Sattellinie {length} hinter der Spitze lässt keine Kopfplatte übrig: die ist mindestens {least} lang.</translation>
    </message>
    <message>
        <source>A nut {nut_width} wide is more than a hand spans: {most} is the most.</source>
        <translation>Ein Sattel von {nut_width} ist breiter, als eine Hand greift: höchstens {most}.</translation>
    </message>
    <message>
        <source>A part that is pressed into its bore is loose in one that is a twentieth of a millimetre wider.</source>
        <translation>Ein Teil, das in seine Bohrung gepresst wird, sitzt in einer um ein Zwanzigstel Millimeter weiteren lose.</translation>
    </message>
    <message>
        <source>A pass may take only {step}, so it would need more than {most_passes} passes: take a wider cutter or longer cutting edges.</source>
        <translation>Ein Durchgang darf nur {step} nehmen, das gäbe mehr als {most_passes} Durchgänge: einen breiteren Fräser oder längere Schneiden nehmen.</translation>
    </message>
    <message>
        <source>A path needs at least one segment.</source>
        <translation>Ein Pfad braucht mindestens ein Stück.</translation>
    </message>
    <message>
        <source>A path of the SVG file has more than {most_path_text:,} characters: simplify it in the program that drew it.</source>
        <translation>Ein Pfad der SVG-Datei hat mehr als {most_path_text:,} Zeichen: im zeichnenden Programm vereinfachen.</translation>
    </message>
    <message>
        <source>A photo or scan behind the drawing, to trace or to draw over.</source>
        <translation>Ein Foto oder Scan hinter der Zeichnung, zum Nachziehen oder Überzeichnen.</translation>
    </message>
    <message>
        <source>A photo or scan to trace</source>
        <translation>Ein Foto oder Scan zum Nachziehen</translation>
    </message>
    <message>
        <source>A picture is moved by finite numbers.</source>
        <translation>Ein Bild wird um endliche Zahlen verschoben.</translation>
    </message>
    <message>
        <source>A picture is shown between 0 and 100 %.</source>
        <translation>Ein Bild wird mit 0 bis 100 % gezeigt.</translation>
    </message>
    <message>
        <source>A piece glued to the side of the blank to make it wide enough. Its glue line should cross no hole.</source>
        <translation>Ein seitlich an den Rohling geleimtes Stück, das ihn breit genug macht. Die Leimfuge sollte keine Bohrung kreuzen.</translation>
    </message>
    <message>
        <source>A pin needs wood all round it.</source>
        <translation>Ein Stift braucht ringsum Holz.</translation>
    </message>
    <message>
        <source>A pin through template and blank that brings the template back to the same place, also after the blank is turned over. One that stands in a bore to come goes where that goes.</source>
        <translation>Ein Stift durch Schablone und Rohling, der die Schablone an denselben Platz zurückbringt, auch nach dem Wenden. Steht er in einer Bohrung, die noch kommt, geht er mit ihr mit.</translation>
    </message>
    <message>
        <source>A place needs two finite numbers, x and y in mm.</source>
        <translation>Ein Ort braucht zwei endliche Zahlen, x und y in mm.</translation>
    </message>
    <message>
        <source>A plate wants wood under all of it.</source>
        <translation>Eine Platte braucht überall Holz unter sich.</translation>
    </message>
    <message>
        <source>A press or Enter takes these pins, Esc does not: {words}.</source>
        <translation>Klick oder Eingabetaste nimmt diese Stifte, Esc nicht: {words}.</translation>
    </message>
    <message>
        <source>A press sets a node; on the first one, or with Enter, the line closes.</source>
        <translation>Ein Klick setzt einen Knoten; auf dem ersten oder mit der Eingabetaste schließt sich die Linie.</translation>
    </message>
    <message>
        <source>A press where the pen stands; a section line and a picture are pulled from one Space to the next</source>
        <translation>Ein Klick, wo der Stift steht; Schnittlinie und Bild werden von einer Leertaste zur nächsten gezogen</translation>
    </message>
    <message>
        <source>A program that ended without saving left work behind that cannot be read.</source>
        <translation>Ein Programm, das ohne zu speichern endete, hat Arbeit hinterlassen, die sich nicht lesen lässt.</translation>
    </message>
    <message>
        <source>A quarter turn</source>
        <translation>Eine Vierteldrehung</translation>
    </message>
    <message>
        <source>A radius is above zero.</source>
        <translation>Ein Radius ist über null.</translation>
    </message>
    <message>
        <source>A radius of {radius} does not fit at this corner: no radius fits.</source>
        <translation>Ein Radius von {radius} passt nicht an diese Ecke: kein Radius passt.</translation>
    </message>
    <message>
        <source>A radius of {radius} does not fit at this corner: the largest that fits is {largest}.</source>
        <translation>Ein Radius von {radius} passt nicht an diese Ecke: höchstens {largest} passen.</translation>
    </message>
    <message>
        <source>A ramp has to leave wood to the back, and ends no deeper than the floor of its slot.</source>
        <translation>Eine Rampe muss zur Rückseite Holz stehen lassen und endet nicht tiefer als der Boden ihres Schlitzes.</translation>
    </message>
    <message>
        <source>A ramp that frees the strings of {slot} would be as deep as the slot: start the slot nearer to the nut.</source>
        <translation>Eine Rampe, die die Saiten von {slot} freigibt, wäre so tief wie der Schlitz: den Schlitz näher am Sattel beginnen.</translation>
    </message>
    <message>
        <source>A ramp that frees the strings of {slot} would begin {nut_air} or less from the nut: raise the nut, or start the slot nearer to it.</source>
        <translation>Eine Rampe, die die Saiten von {slot} freigibt, begänne {nut_air} oder weniger vom Sattel: den Sattel erhöhen oder den Schlitz näher daran beginnen.</translation>
    </message>
    <message>
        <source>A ramp that frees the strings of {slot} would leave less than {cover} of wood to the back: start the slot nearer to the nut.</source>
        <translation>Eine Rampe, die die Saiten von {slot} freigibt, ließe weniger als {cover} Holz zur Rückseite: den Schlitz näher am Sattel beginnen.</translation>
    </message>
    <message>
        <source>A ramp wants wood to either side, or it runs out at the edge.</source>
        <translation>Eine Rampe braucht auf beiden Seiten Holz, sonst läuft sie am Rand aus.</translation>
    </message>
    <message>
        <source>A reading of {reading} cannot be: no headstock is longer than {farthest}.</source>
        <translation>Ein Messwert von {reading} kann nicht sein: keine Kopfplatte ist länger als {farthest}.</translation>
    </message>
    <message>
        <source>A rectangle has four corners.</source>
        <translation>Ein Rechteck hat vier Ecken.</translation>
    </message>
    <message>
        <source>A rectangle of known size: sheet, ruler, template</source>
        <translation>Ein Rechteck bekannter Größe: Blatt, Maßstab, Schablone</translation>
    </message>
    <message>
        <source>A rectangle of {sized} round the outline was taken for the frame of the sheet or the edge of the blank.</source>
        <translation>Ein Rechteck von {sized} um den Umriss wurde für den Rahmen des Blattes oder den Rand des Rohlings genommen.</translation>
    </message>
    <message>
        <source>A retainer is screwed to the face, and {id} is drilled from the back and does not come through: drill it from the face.</source>
        <translation>Ein Niederhalter wird auf die Vorderseite geschraubt, und {id} wird von der Rückseite gebohrt und kommt nicht durch: von der Vorderseite bohren.</translation>
    </message>
    <message>
        <source>A retainer is screwed to the face.</source>
        <translation>Ein Niederhalter wird auf die Vorderseite geschraubt.</translation>
    </message>
    <message>
        <source>A retainer presses on the strings that pass under it.</source>
        <translation>Ein Niederhalter drückt auf die Saiten, die unter ihm durchlaufen.</translation>
    </message>
    <message>
        <source>A ring under the router that rubs on the template while the cutter turns inside it.</source>
        <translation>Ein Ring unter der Oberfräse, der an der Schablone anliegt, während sich der Fräser darin dreht.</translation>
    </message>
    <message>
        <source>A rounding needs a radius above zero.</source>
        <translation>Eine Rundung braucht einen Radius über null.</translation>
    </message>
    <message>
        <source>A row takes at least two tuners.</source>
        <translation>Eine Reihe braucht mindestens zwei Mechaniken.</translation>
    </message>
    <message>
        <source>A row that runs across the centreline cannot be edited symmetrically.</source>
        <translation>Eine Reihe quer über die Mittellinie lässt sich nicht symmetrisch bearbeiten.</translation>
    </message>
    <message>
        <source>A scan of {n:.0f} points to the inch, as its file says</source>
        <translation>Ein Scan mit {n:.0f} Punkten je Zoll, wie die Datei es sagt</translation>
    </message>
    <message>
        <source>A scarf joint runs through the wood at the pitch of the head: that is {pitch} degrees here, and has to be {least} or more.</source>
        <translation>Eine Schäftung läuft im Kopfwinkel durch das Holz: Der ist hier {pitch} Grad und muss {least} oder mehr sein.</translation>
    </message>
    <message>
        <source>A screw beside a side tuner's post has to go into the edge of the head.</source>
        <translation>Eine Schraube neben der Welle einer Seitenmechanik muss in die Kante der Kopfplatte gehen.</translation>
    </message>
    <message>
        <source>A screw lifts and splits the wood where a scarf joint runs out to nothing.</source>
        <translation>Eine Schraube hebt und spaltet das Holz, wo eine Schäftung auf nichts ausläuft.</translation>
    </message>
    <message>
        <source>A sentence for yourself.</source>
        <translation>Ein Satz für Sie selbst.</translation>
    </message>
    <message>
        <source>A sentence for yourself; it is printed in the part list.</source>
        <translation>Ein Satz für Sie selbst; er steht in der Teileliste.</translation>
    </message>
    <message>
        <source>A shape of {sized} was left out: it is wider than any headstock, as a body or a board is.</source>
        <translation>Eine Form von {sized} wurde weggelassen: Sie ist breiter als jede Kopfplatte, wie ein Korpus oder ein Brett es ist.</translation>
    </message>
    <message>
        <source>A sheet for one tuner at the drill press, or one slot at the router: marks, tilt, stop and bit, with a section at full size.</source>
        <translation>Ein Blatt für eine Mechanik an der Bohrmaschine oder einen Schlitz an der Oberfräse: Anrisse, Neigung, Bohrtiefe und Werkzeug, mit einem Schnitt in voller Größe.</translation>
    </message>
    <message>
        <source>A side bore has to come through the rail into its slot.</source>
        <translation>Eine Seitenbohrung muss durch die Wange in ihren Schlitz kommen.</translation>
    </message>
    <message>
        <source>A side bore starts at a mark on the square edge of the blank.</source>
        <translation>Eine Seitenbohrung beginnt an einem Anriss auf der geraden Kante des Rohlings.</translation>
    </message>
    <message>
        <source>A side has no {count} tuners: give 0 or more.</source>
        <translation>Eine Seite kann nicht {count} Mechaniken haben: 0 oder mehr angeben.</translation>
    </message>
    <message>
        <source>A side is copied to the other side.</source>
        <translation>Eine Seite wird auf die andere Seite kopiert.</translation>
    </message>
    <message>
        <source>A side of the outline lies behind the nut line and never comes before it: move it, or slant the nut less.</source>
        <translation>Eine Seite des Umrisses liegt hinter der Sattellinie und kommt nie vor sie: sie versetzen oder den Sattel weniger schräg legen.</translation>
    </message>
    <message>
        <source>A simulation takes 2 to {most:,} trials, not {trials:,}.</source>
        <translation>Eine Simulation macht 2 bis {most:,} Versuche, nicht {trials:,}.</translation>
    </message>
    <message>
        <source>A slot needs a width above zero, and of {widest} at most.</source>
        <translation>Ein Schlitz braucht eine Breite über null und von höchstens {widest}.</translation>
    </message>
    <message>
        <source>A slot needs a width above zero.</source>
        <translation>Ein Schlitz braucht eine Breite über null.</translation>
    </message>
    <message>
        <source>A slot or the outline that is cut in the real piece, by the job book, stays as it was cut.</source>
        <translation>Ein Schlitz oder der Umriss, der laut Werkbuch im echten Stück ausgearbeitet ist, bleibt, wie er ausgearbeitet wurde.</translation>
    </message>
    <message>
        <source>A slot that crosses the outline leaves no rail.</source>
        <translation>Ein Schlitz, der den Umriss kreuzt, lässt keine Wange.</translation>
    </message>
    <message>
        <source>A slot {wide} wide would let {bit} in, {done}.</source>
        <translation>In einen {wide} breiten Schlitz käme {bit}, {done}.</translation>
    </message>
    <message>
        <source>A spline has neither control points nor fit points.</source>
        <translation>Ein Spline hat weder Kontroll- noch Stützpunkte.</translation>
    </message>
    <message>
        <source>A spline has {knots} knots where {need} belong.</source>
        <translation>Ein Spline hat {knots} Knotenwerte, wo {need} hingehören.</translation>
    </message>
    <message>
        <source>A spline of degree {p} needs at least {p2} control points, and has {count}.</source>
        <translation>Ein Spline vom Grad {p} braucht mindestens {p2} Kontrollpunkte und hat {count}.</translation>
    </message>
    <message>
        <source>A spline of degree {p} with {count} control points needs {count2} knots, and has {knots}.</source>
        <translation>Ein Spline vom Grad {p} mit {count} Kontrollpunkten braucht {count2} Knotenwerte und hat {knots}.</translation>
    </message>
    <message>
        <source>A spline with {count} control points has {weights} weights.</source>
        <translation>Ein Spline mit {count} Kontrollpunkten hat {weights} Gewichte.</translation>
    </message>
    <message>
        <source>A string in a slot must not rub on the walls beside it.</source>
        <translation>Eine Saite im Schlitz darf an den Wänden nicht scheuern.</translation>
    </message>
    <message>
        <source>A string needs air above the wood wherever it is held down.</source>
        <translation>Eine Saite braucht Luft über dem Holz, wo immer sie niedergehalten wird.</translation>
    </message>
    <message>
        <source>A string on its way to its post needs air past the others.</source>
        <translation>Auf dem Weg zu ihrer Welle braucht eine Saite Luft zu den anderen.</translation>
    </message>
    <message>
        <source>A string that bends far over the nut wears it, and sticks in it as it is tuned.</source>
        <translation>Eine Saite, die über den Sattel weit abknickt, nutzt ihn ab und klemmt beim Stimmen in ihm.</translation>
    </message>
    <message>
        <source>A string that goes down into a slot must clear the edge it dives over, or get a ramp.</source>
        <translation>Eine Saite, die in einen Schlitz eintaucht, muss über dessen Kante frei sein oder braucht eine Rampe.</translation>
    </message>
    <message>
        <source>A string that hardly presses on its nut slot rattles there, and jumps out of it.</source>
        <translation>Eine Saite, die kaum auf ihre Sattelkerbe drückt, schnarrt dort und springt heraus.</translation>
    </message>
    <message>
        <source>A tapered peg bears on the whole of its hole: the drill leaves wood for the reamer at both ends.</source>
        <translation>Ein konischer Wirbel liegt im ganzen Loch an: der Bohrer lässt an beiden Enden Holz für die Reibahle.</translation>
    </message>
    <message>
        <source>A template {thick} thick would let {bit} do it, {done}.</source>
        <translation>Mit einer {thick} dicken Schablone ginge es mit {bit}, {done}.</translation>
    </message>
    <message>
        <source>A thickness typed in another unit makes every depth wrong.</source>
        <translation>Eine Dicke, die in einer anderen Einheit eingegeben wurde, macht jede Tiefe falsch.</translation>
    </message>
    <message>
        <source>A thin sheet glued over the face (the head plate) or the back. The thickness of the head is measured with it.</source>
        <translation>Ein dünnes Blatt, auf die Vorderseite oder die Rückseite geleimt. Die Dicke der Kopfplatte wird mit ihm gemessen.</translation>
    </message>
    <message>
        <source>A tuner in its place</source>
        <translation>Mechanik an ihrer Stelle</translation>
    </message>
    <message>
        <source>A tuner is mounted through the face or the side, or the two are mixed; not {mount!r}.</source>
        <translation>Eine Mechanik sitzt in der Vorderseite oder in der Seite, oder beides gemischt; nicht {mount!r}.</translation>
    </message>
    <message>
        <source>A tuner through the face clamps wood of a certain thickness between its plate and its bushing.</source>
        <translation>Eine Mechanik durch die Vorderseite klemmt zwischen Platte und Buchse Holz von bestimmter Dicke.</translation>
    </message>
    <message>
        <source>A wall that crosses itself cannot be routed.</source>
        <translation>Eine Wand, die sich selbst kreuzt, lässt sich nicht fräsen.</translation>
    </message>
    <message>
        <source>A wanted chance lies between 0 and 1: it cannot be {chance:g}.</source>
        <translation>Eine gewünschte Wahrscheinlichkeit liegt zwischen 0 und 1: {chance:g} kann sie nicht sein.</translation>
    </message>
    <message>
        <source>A wider, shallower hole on the axis of another, for a bushing or a screw's head. It is drilled first: the drill's spur needs wood at the centre.</source>
        <translation>Eine weitere, flachere Bohrung auf der Achse einer anderen, für eine Buchse oder einen Schraubenkopf. Sie wird zuerst gebohrt: die Zentrierspitze braucht Holz in der Mitte.</translation>
    </message>
    <message>
        <source>A {bit}</source>
        <translation>Ein {bit}</translation>
    </message>
    <message>
        <source>A&amp;bout Pegwright</source>
        <translation>Über &amp;Pegwright</translation>
    </message>
    <message>
        <source>A3 on its side</source>
        <translation>A3 quer</translation>
    </message>
    <message>
        <source>A3 upright</source>
        <translation>A3 hoch</translation>
    </message>
    <message>
        <source>A4 on its side</source>
        <translation>A4 quer</translation>
    </message>
    <message>
        <source>A4 upright</source>
        <translation>A4 hoch</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Woran</translation>
    </message>
    <message>
        <source>About 95 in 100 of your marks, bores and cuts stay within these. Measure a practice piece and enter what you find: the chances are a model with these figures.</source>
        <translation>Etwa 95 von 100 Ihrer Anrisse, Bohrungen und Schnitte bleiben darin. Messen Sie ein Probestück und tragen Sie ein, was Sie finden: die Aussichten sind ein Modell mit diesen Zahlen.</translation>
    </message>
    <message>
        <source>About Pegwright</source>
        <translation>Über Pegwright</translation>
    </message>
    <message>
        <source>About {total}, {set_up} of it to set up.</source>
        <translation>Etwa {total}, davon {set_up} zum Rüsten.</translation>
    </message>
    <message>
        <source>About {total}.</source>
        <translation>Etwa {total}.</translation>
    </message>
    <message>
        <source>Above 10 degrees a string tends to catch in the nut.</source>
        <translation>Über 10 Grad hakt eine Saite leicht im Sattel.</translation>
    </message>
    <message>
        <source>Above zero it lies outside the line, below zero inside. Corners that open become round.</source>
        <translation>Über null liegt sie außerhalb der Linie, unter null innerhalb. Ecken, die sich öffnen, werden rund.</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Quer</translation>
    </message>
    <message>
        <source>Across the axis: with its thickness it sweeps the room that fingers need.</source>
        <translation>Quer zur Achse: mit seiner Dicke überstreicht er den Raum, den Finger brauchen.</translation>
    </message>
    <message>
        <source>Across the head: strings that pass within half of it of the screw are held. A bar on two screws is two retainers that reach to its middle.</source>
        <translation>Quer über die Kopfplatte: Gehalten werden Saiten, die höchstens die Hälfte davon neben der Schraube verlaufen. Ein Steg an zwei Schrauben besteht aus zwei Niederhaltern, die bis zu seiner Mitte reichen.</translation>
    </message>
    <message>
        <source>Across, from the centreline</source>
        <translation>Quer, von der Mittellinie</translation>
    </message>
    <message>
        <source>Actions and words</source>
        <translation>Befehle und Begriffe</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add a bore</source>
        <translation>Eine Bohrung hinzufügen</translation>
    </message>
    <message>
        <source>Add a node</source>
        <translation>Einen Knoten hinzufügen</translation>
    </message>
    <message>
        <source>Add a node to the outline</source>
        <translation>Dem Umriss einen Knoten hinzufügen</translation>
    </message>
    <message>
        <source>Add a node to {slot}</source>
        <translation>{slot} einen Knoten hinzufügen</translation>
    </message>
    <message>
        <source>Add a row for each part of the layout that is not listed yet.</source>
        <translation>Für jedes noch fehlende Teil des Entwurfs eine Zeile hinzufügen.</translation>
    </message>
    <message>
        <source>Add a string for each of the {n} posts</source>
        <translation>Eine Saite für jede der {n} Wellen</translation>
    </message>
    <message>
        <source>Add a string on the bass side</source>
        <translation>Eine Saite auf der Bassseite hinzufügen</translation>
    </message>
    <message>
        <source>Add a string on the treble side</source>
        <translation>Eine Saite auf der Diskantseite hinzufügen</translation>
    </message>
    <message>
        <source>Add a string retainer</source>
        <translation>Einen Saitenniederhalter hinzufügen</translation>
    </message>
    <message>
        <source>Add a truss r&amp;od pocket</source>
        <translation>Halsstabtasche hin&amp;zufügen</translation>
    </message>
    <message>
        <source>Add a truss rod pocket</source>
        <translation>Halsstabtasche hinzufügen</translation>
    </message>
    <message>
        <source>Add an ear on the bass side</source>
        <translation>Ein Ohr auf der Bassseite hinzufügen</translation>
    </message>
    <message>
        <source>Add an ear on the treble side</source>
        <translation>Ein Ohr auf der Diskantseite hinzufügen</translation>
    </message>
    <message>
        <source>Add the minutes to the step that is timed.</source>
        <translation>Die Minuten dem gestoppten Schritt zuzählen.</translation>
    </message>
    <message>
        <source>Add to the rack</source>
        <translation>Dem Bestand hinzufügen</translation>
    </message>
    <message>
        <source>Add {held}</source>
        <translation>{held} hinzufügen</translation>
    </message>
    <message>
        <source>Add {held}, its hardware mirrored for this edge</source>
        <translation>{held} hinzufügen, Mechanik für diese Kante gespiegelt</translation>
    </message>
    <message>
        <source>Add {ids}</source>
        <translation>{ids} hinzufügen</translation>
    </message>
    <message>
        <source>Afterwards, by hand: {words}</source>
        <translation>Danach von Hand: {words}</translation>
    </message>
    <message>
        <source>Against the grain over {length} at {middle}, up to {steepest:.0f} degrees off it: fibres tear out. Leave a shaving for a last light pass, or rout it with the {other} up.</source>
        <translation>Gegen die Faser auf {length} bei {middle}, bis {steepest:.0f} Grad schräg: Fasern reißen aus. Einen Span für einen letzten leichten Durchgang lassen oder mit {other} nach oben fräsen.</translation>
    </message>
    <message>
        <source>All are still the defaults: common practice, no source.</source>
        <translation>Alle sind noch die Vorgaben: übliche Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>All in all, work took {overall:.2f} times as long as planned; a step that was timed for long counts by itself.</source>
        <translation>Insgesamt dauerte es das {overall:.2f}-fache des Plans; ein lange gestoppter Schritt zählt für sich.</translation>
    </message>
    <message>
        <source>All one way, as tuners on one plate do: counter-clockwise from straight across to the treble side. Left empty each points squarely at its nearest edge.</source>
        <translation>Alle in eine Richtung, wie bei Mechaniken auf einer gemeinsamen Platte: gegen den Uhrzeigersinn von quer zur Diskantseite. Leer gelassen zeigt jeder rechtwinklig zur nächsten Kante.</translation>
    </message>
    <message>
        <source>All samples are invented. Margins and rates marked as common practice have no published source: set what you trust.</source>
        <translation>Alle Beispiele sind erfunden. Mindestabstände und Zeiten, die als üblich gekennzeichnet sind, haben keine veröffentlichte Quelle: stellen Sie ein, worauf Sie sich verlassen.</translation>
    </message>
    <message>
        <source>All that can be used of the drawing lies on its paper pages, where sizes are those on paper: copy the outline at full size into the model, where the drawing itself belongs.</source>
        <translation>Alles Brauchbare der Zeichnung liegt auf ihren Papierseiten, wo die Maße die auf dem Papier sind: den Umriss in voller Größe in das Modell kopieren, wohin die Zeichnung selbst gehört.</translation>
    </message>
    <message>
        <source>All that is held comes as far from the centreline as the first.</source>
        <translation>Alles Gehaltene kommt so weit von der Mittellinie wie das erste.</translation>
    </message>
    <message>
        <source>All that is held comes to the height of the first.</source>
        <translation>Alles Gehaltene kommt auf die Höhe des ersten.</translation>
    </message>
    <message>
        <source>Along the axis that fingers turn.</source>
        <translation>Entlang der Achse, die die Finger drehen.</translation>
    </message>
    <message>
        <source>Along the edge</source>
        <translation>Entlang der Kante</translation>
    </message>
    <message>
        <source>Along, from the {line}</source>
        <translation>Längs, von der {line}</translation>
    </message>
    <message>
        <source>Along, to the tip</source>
        <translation>Längs, zur Spitze</translation>
    </message>
    <message>
        <source>Alt while dragging</source>
        <translation>Alt beim Ziehen</translation>
    </message>
    <message>
        <source>Alt+1 … Alt+9</source>
        <translation>Alt+1 … Alt+9</translation>
    </message>
    <message>
        <source>Alt+Up, Alt+Down</source>
        <translation>Alt+Auf, Alt+Ab</translation>
    </message>
    <message>
        <source>An arc cannot be pulled onto its own end: pull it farther out.</source>
        <translation>Ein Bogen lässt sich nicht auf sein eigenes Ende ziehen: weiter hinausziehen.</translation>
    </message>
    <message>
        <source>An arc needs a radius above zero.</source>
        <translation>Ein Bogen braucht einen Radius über null.</translation>
    </message>
    <message>
        <source>An arc needs two different ends and a bulge that is not zero.</source>
        <translation>Ein Bogen braucht zwei verschiedene Enden und eine Wölbung ungleich null.</translation>
    </message>
    <message>
        <source>An ear or a plug that is glued to the real piece, by the job book, stays as it was glued.</source>
        <translation>Was laut Werkbuch am echten Stück geleimt ist, ein Ohr oder ein Stopfen, bleibt, wie es geleimt wurde.</translation>
    </message>
    <message>
        <source>An edge at this corner has no length: remove its node first.</source>
        <translation>Eine Kante an dieser Ecke hat keine Länge: zuerst ihren Knoten entfernen.</translation>
    </message>
    <message>
        <source>An edge at this node has no length, so the node cannot be smooth: remove it first.</source>
        <translation>Eine Kante an diesem Knoten hat keine Länge, er kann nicht glatt sein: zuerst entfernen.</translation>
    </message>
    <message>
        <source>An edge is straight, an arc or a curve, not {kind}.</source>
        <translation>Eine Kante ist gerade, ein Bogen oder eine Kurve, nicht {kind}.</translation>
    </message>
    <message>
        <source>An edge needs a length above zero.</source>
        <translation>Eine Kante braucht eine Länge über null.</translation>
    </message>
    <message>
        <source>An edge needs two different ends.</source>
        <translation>Eine Kante braucht zwei verschiedene Enden.</translation>
    </message>
    <message>
        <source>An open path cannot be placed: close the outline first.</source>
        <translation>Ein offener Pfad lässt sich nicht legen: zuerst den Umriss schließen.</translation>
    </message>
    <message>
        <source>An open path has no area: close it first.</source>
        <translation>Ein offener Pfad hat keine Fläche: zuerst schließen.</translation>
    </message>
    <message>
        <source>An open path has no inside: close it first.</source>
        <translation>Ein offener Pfad hat kein Inneres: zuerst schließen.</translation>
    </message>
    <message>
        <source>An opening in the head that the posts of side tuners cross.</source>
        <translation>Eine Öffnung in der Kopfplatte, über der die Wellen der Seitenmechaniken liegen.</translation>
    </message>
    <message>
        <source>An opening that the blank has already, such as the access to a truss rod under the nut: all keeps clear of it, nothing cuts it.</source>
        <translation>Eine Öffnung, die der Rohling schon hat, etwa der Zugang zum Halsstab unter dem Sattel: Alles hält Abstand, nichts schneidet daran.</translation>
    </message>
    <message>
        <source>An operation takes between 0 and {longest:,.0f} minutes: {minutes:g} cannot be.</source>
        <translation>Ein Arbeitsgang dauert zwischen 0 und {longest:,.0f} Minuten: {minutes:g} kann nicht sein.</translation>
    </message>
    <message>
        <source>An outline from a DXF or SVG file.</source>
        <translation>Ein Umriss aus einer DXF- oder SVG-Datei.</translation>
    </message>
    <message>
        <source>An unevenly stretched arc is no arc: turn it into curves first.</source>
        <translation>Ein ungleich gestreckter Bogen ist kein Bogen: zuerst in Kurven umwandeln.</translation>
    </message>
    <message>
        <source>An {bit}</source>
        <translation>Ein {bit}</translation>
    </message>
    <message>
        <source>And {n} more note in the job book.</source>
        <translation>Und {n} weitere Notiz im Werkbuch.</translation>
    </message>
    <message>
        <source>And {n} more notes in the job book.</source>
        <translation>Und {n} weitere Notizen im Werkbuch.</translation>
    </message>
    <message>
        <source>And {n} more step that cannot be done: it says why.</source>
        <translation>Und {n} weiterer Schritt, der nicht geht: er sagt warum.</translation>
    </message>
    <message>
        <source>And {n} more steps that cannot be done: each says why.</source>
        <translation>Und {n} weitere Schritte, die nicht gehen: jeder sagt warum.</translation>
    </message>
    <message>
        <source>And {n} more that cannot be done: each is marked below.</source>
        <translation>Und {n} weitere, die nicht gehen: jeder ist unten gekennzeichnet.</translation>
    </message>
    <message>
        <source>And {n} more that cannot be done: it is marked below.</source>
        <translation>Und {n} weiterer, der nicht geht: er ist unten gekennzeichnet.</translation>
    </message>
    <message>
        <source>And {n} more thing that this order spoils or makes harder: its step says it.</source>
        <translation>Und {n} weiteres, das diese Folge verdirbt oder erschwert: der Schritt sagt es.</translation>
    </message>
    <message>
        <source>And {n} more thing to mind: its step in the running order says it.</source>
        <translation>Und {n} weiteres zu beachten: der Schritt in der Folge sagt es.</translation>
    </message>
    <message>
        <source>And {n} more things that this order spoils or makes harder: their steps say them.</source>
        <translation>Und {n} weitere, die diese Folge verdirbt oder erschwert: die Schritte sagen es.</translation>
    </message>
    <message>
        <source>And {n} more things to mind: their steps in the running order say them.</source>
        <translation>Und {n} weitere Dinge zu beachten: die Schritte in der Folge sagen sie.</translation>
    </message>
    <message>
        <source>And {n} more.</source>
        <translation>Und {n} weitere.</translation>
    </message>
    <message>
        <source>And {n} smaller corner more to pare.</source>
        <translation>Und {n} kleinere Ecke zum Nachstechen.</translation>
    </message>
    <message>
        <source>And {n} smaller corners more to pare.</source>
        <translation>Und {n} kleinere Ecken zum Nachstechen.</translation>
    </message>
    <message>
        <source>Another plan than the best: your choice is kept in the layout.</source>
        <translation>Ein anderer Plan als der beste: Ihre Wahl bleibt im Entwurf.</translation>
    </message>
    <message>
        <source>Another rectangle</source>
        <translation>Ein anderes Rechteck</translation>
    </message>
    <message>
        <source>Apart across, at most</source>
        <translation>Abstand quer, höchstens</translation>
    </message>
    <message>
        <source>Apart along, at most</source>
        <translation>Abstand längs, höchstens</translation>
    </message>
    <message>
        <source>Apply the finish and let it harden.</source>
        <translation>Lackieren und aushärten lassen.</translation>
    </message>
    <message>
        <source>Arc</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>Arc length from the {line} to the first of the row.</source>
        <translation>Bogenlänge von der {line} bis zur ersten der Reihe.</translation>
    </message>
    <message>
        <source>Arc length from the {line}.</source>
        <translation>Bogenlänge von der {line}.</translation>
    </message>
    <message>
        <source>Arrow keys</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message>
        <source>Arrow keys, in the solid view</source>
        <translation>Pfeiltasten, in der räumlichen Ansicht</translation>
    </message>
    <message>
        <source>Arrow keys, with a tool in hand</source>
        <translation>Pfeiltasten, mit einem Werkzeug in der Hand</translation>
    </message>
    <message>
        <source>As drawn one snag spoils the work however finely you work: what follows leaves it out.</source>
        <translation>So gezeichnet verdirbt ein Haken die Arbeit, so fein Sie auch arbeiten: Was folgt, lässt ihn aus.</translation>
    </message>
    <message>
        <source>As drawn that edge lies {askew:.1f} degrees askew: with --slanted the drawing stays upright and the nut is slanted.</source>
        <translation>Wie gezeichnet liegt diese Kante um {askew:.1f} Grad schief: Mit --slanted bleibt die Zeichnung aufrecht und der Sattel liegt schräg.</translation>
    </message>
    <message>
        <source>As drawn {n} snags spoil the work however finely you work: what follows leaves them out.</source>
        <translation>So gezeichnet verderben {n} Haken die Arbeit, so fein Sie auch arbeiten: Was folgt, lässt sie aus.</translation>
    </message>
    <message>
        <source>As far as its bushing reaches; a thicker head is a snag.</source>
        <translation>So weit, wie ihre Buchse reicht; eine dickere Kopfplatte ist ein Haken.</translation>
    </message>
    <message>
        <source>As far as the table goes either way; a bore that wants more is a snag.</source>
        <translation>So weit der Tisch nach beiden Seiten geht; eine Bohrung, die mehr braucht, ist ein Haken.</translation>
    </message>
    <message>
        <source>As large as on paper (1)</source>
        <translation>So groß wie auf Papier (1)</translation>
    </message>
    <message>
        <source>As long as the plate, and a little more for the chisel.</source>
        <translation>So lang wie die Platte und etwas mehr für das Stecheisen.</translation>
    </message>
    <message>
        <source>As now</source>
        <translation>Wie jetzt</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>As usual already: {instrument}.</source>
        <translation>Schon wie üblich: {instrument}.</translation>
    </message>
    <message>
        <source>As usual for an instrument</source>
        <translation>Wie üblich für ein Instrument</translation>
    </message>
    <message>
        <source>As usual now: {instrument}.</source>
        <translation>Jetzt wie üblich: {instrument}.</translation>
    </message>
    <message>
        <source>As usual now: {instrument}. No posts tell yet how many strings there are.</source>
        <translation>Jetzt wie üblich: {instrument}. Wie viele Saiten es sind, steht ohne Wellen noch nicht fest.</translation>
    </message>
    <message>
        <source>Aside</source>
        <translation>Zur Seite</translation>
    </message>
    <message>
        <source>Aside and down: by how much each string bends out of the line of the neck on its way to its post. File its slot that way.</source>
        <translation>Seitlich und abwärts: wie weit jede Saite zu ihrer Welle hin von der Richtung des Halses abknickt; so ihre Kerbe feilen.</translation>
    </message>
    <message>
        <source>Ask me next time</source>
        <translation>Beim nächsten Mal fragen</translation>
    </message>
    <message>
        <source>Aslant</source>
        <translation>Schräg</translation>
    </message>
    <message>
        <source>At 100 %, corrected for the printer.</source>
        <translation>Mit 100 %, für den Drucker korrigiert.</translation>
    </message>
    <message>
        <source>At a corner the edges meet at any angle; at a smooth node they go on in one direction.</source>
        <translation>An einer Ecke treffen sich die Kanten in beliebigem Winkel; an einem glatten Knoten gehen sie in einer Richtung weiter.</translation>
    </message>
    <message>
        <source>At full size, seen from above, the head away from you: lay it on the nut, end on end, and mark each string, or step every place off from the bass end, so that no error adds up. In {unit}.</source>
        <translation>In voller Größe, von oben, die Kopfplatte von Ihnen weg: Ende auf Ende an den Sattel legen und jede Saite anzeichnen, oder jeden Ort vom Bassende abtragen, dann summiert sich kein Fehler. In {unit}.</translation>
    </message>
    <message>
        <source>At the nut the line runs too flat to be offset.</source>
        <translation>Am Sattel verläuft die Linie zu flach, um sie zu versetzen.</translation>
    </message>
    <message>
        <source>At the {side} it stands {by} mm beyond the wood.</source>
        <translation>An der {side} steht er {by} mm über das Holz hinaus.</translation>
    </message>
    <message>
        <source>At the {side} the wood stands {by} mm beyond it.</source>
        <translation>An der {side} steht das Holz {by} mm über ihn hinaus.</translation>
    </message>
    <message>
        <source>Axis below the face</source>
        <translation>Achse unter der Vorderseite</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>Back paper</source>
        <translation>Rückbogen</translation>
    </message>
    <message>
        <source>Back to the beginning</source>
        <translation>Zurück zum Anfang</translation>
    </message>
    <message>
        <source>Back to the best order</source>
        <translation>Zurück zur besten Folge</translation>
    </message>
    <message>
        <source>Back to the best plan</source>
        <translation>Zurück zum besten Plan</translation>
    </message>
    <message>
        <source>Back to the layout</source>
        <translation>Zurück zum Entwurf</translation>
    </message>
    <message>
        <source>Back to “{name}”</source>
        <translation>Zurück zu „{name}“</translation>
    </message>
    <message>
        <source>Back to: {name}</source>
        <translation>Zurück zu: {name}</translation>
    </message>
    <message>
        <source>Back up</source>
        <translation>Rückseite oben</translation>
    </message>
    <message>
        <source>Back veneer, counted in</source>
        <translation>Rückenfurnier, mitgezählt</translation>
    </message>
    <message>
        <source>Backspace, Ctrl+Z or Delete, while a line is drawn</source>
        <translation>Rücktaste, Strg+Z oder Entf, solange eine Linie gezeichnet wird</translation>
    </message>
    <message>
        <source>Band saw: set the guard just above the wood, keep your fingers out of the line of the blade, take a tight curve in several cuts, and wait until the blade stands before you clear it.</source>
        <translation>Bandsäge: die Blattführung bis knapp über das Holz senken, die Finger nie in die Linie des Sägeblatts, enge Bögen in mehreren Schnitten, und erst aufräumen, wenn das Blatt steht.</translation>
    </message>
    <message>
        <source>Banjo (four strings on the head)</source>
        <translation>Banjo (vier Saiten an der Kopfplatte)</translation>
    </message>
    <message>
        <source>Base diameter</source>
        <translation>Fußplatte, Durchmesser</translation>
    </message>
    <message>
        <source>Base for block heights</source>
        <translation>Grundlänge für Klötze</translation>
    </message>
    <message>
        <source>Base line</source>
        <translation>Grundlinie</translation>
    </message>
    <message>
        <source>Base rests inside by</source>
        <translation>Fußplatte steht auf um</translation>
    </message>
    <message>
        <source>Bass</source>
        <translation>Bass</translation>
    </message>
    <message>
        <source>Bass and treble change places</source>
        <translation>Bass und Diskant tauschen</translation>
    </message>
    <message>
        <source>Bass edge, treble edge</source>
        <translation>Basskante, Diskantkante</translation>
    </message>
    <message>
        <source>Bass slots and tuners, mirrored to the treble side.</source>
        <translation>Schlitze und Mechaniken der Bassseite, auf die Diskantseite gespiegelt.</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Anlaufring</translation>
    </message>
    <message>
        <source>Bearing diameter</source>
        <translation>Anlaufring, Durchmesser</translation>
    </message>
    <message>
        <source>Bearing height</source>
        <translation>Anlaufring, Höhe</translation>
    </message>
    <message>
        <source>Becomes</source>
        <translation>Wird zu</translation>
    </message>
    <message>
        <source>Before the post</source>
        <translation>Vor der Welle</translation>
    </message>
    <message>
        <source>Before these</source>
        <translation>Vor diesen</translation>
    </message>
    <message>
        <source>Before you swap steps</source>
        <translation>Bevor Sie Schritte tauschen</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Begin and stop at the nut line: round the end of the template the cutter goes into the head.</source>
        <translation>An der Sattellinie beginnen und aufhören: um das Ende der Schablone herum gerät der Fräser in die Kopfplatte.</translation>
    </message>
    <message>
        <source>Begin and stop at the nut line: round the end of the template the cutter goes into the neck.</source>
        <translation>An der Sattellinie beginnen und aufhören: um das Ende der Schablone herum gerät der Fräser in den Hals.</translation>
    </message>
    <message>
        <source>Begin another layout beside this one.</source>
        <translation>Einen weiteren Entwurf neben diesem beginnen.</translation>
    </message>
    <message>
        <source>Begin from numbers, a sample, a drawing or a picture.</source>
        <translation>Aus Zahlen, einem Beispiel, einer Zeichnung oder einem Bild beginnen.</translation>
    </message>
    <message>
        <source>Begin the practice piece anew</source>
        <translation>Das Probestück neu beginnen</translation>
    </message>
    <message>
        <source>Begin the real piece anew</source>
        <translation>Das echte Stück neu beginnen</translation>
    </message>
    <message>
        <source>Begin this piece anew</source>
        <translation>Dieses Stück neu beginnen</translation>
    </message>
    <message>
        <source>Begins, from the {line}</source>
        <translation>Beginnt, von der {line}</translation>
    </message>
    <message>
        <source>Begun from a few numbers; every part of it can be changed.</source>
        <translation>Aus wenigen Zahlen begonnen; jedes Teil lässt sich ändern.</translation>
    </message>
    <message>
        <source>Behind the nut line the neck hangs below the head, {drop} on each {base} of it: raise the head on a board, or let the neck hang over the edge of the table.</source>
        <translation>Hinter der Sattellinie hängt der Hals tiefer als die Kopfplatte, {drop} auf je {base}: die Kopfplatte auf ein Brett legen oder den Hals über die Tischkante hängen lassen.</translation>
    </message>
    <message>
        <source>Behind the nut line the neck leans to the fence, {drop} on each {base} of it: let the fence end there.</source>
        <translation>Hinter der Sattellinie neigt sich der Hals zum Anschlag hin, {drop} auf je {base}: den Anschlag dort enden lassen.</translation>
    </message>
    <message>
        <source>Behind the nut line the neck stands up, {drop} on each {base} of it: turn it away from the column, clear of quill and handle.</source>
        <translation>Hinter der Sattellinie steht der Hals hoch, {drop} auf je {base}: von der Säule weg drehen, frei von Pinole und Hebel.</translation>
    </message>
    <message>
        <source>Behind the post</source>
        <translation>Hinter der Welle</translation>
    </message>
    <message>
        <source>Being worked out</source>
        <translation>Wird berechnet</translation>
    </message>
    <message>
        <source>Being worked out anew: what stands below is older than the last change.</source>
        <translation>Wird neu berechnet: Was darunter steht, ist älter als die letzte Änderung.</translation>
    </message>
    <message>
        <source>Being worked out…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>Below zero it tells how deep the deepest corner is in; the shortest way out may be another.</source>
        <translation>Unter null gilt, wie tief die tiefste Ecke darin steckt; der kürzeste Weg heraus kann ein anderer sein.</translation>
    </message>
    <message>
        <source>Bend an edge of the outline</source>
        <translation>Eine Kante des Umrisses biegen</translation>
    </message>
    <message>
        <source>Bend an edge of {slot}</source>
        <translation>Eine Kante von {slot} biegen</translation>
    </message>
    <message>
        <source>Bend the outline</source>
        <translation>Den Umriss biegen</translation>
    </message>
    <message>
        <source>Bend {slot}</source>
        <translation>{slot} biegen</translation>
    </message>
    <message>
        <source>Beside an ear the wood ends at its glue line, and the square edge lies there.</source>
        <translation>Neben einem Ohr endet das Holz an dessen Leimfuge, und dort liegt die gerade Kante.</translation>
    </message>
    <message>
        <source>Beside the hours of work: for so long the piece stands in the clamps.</source>
        <translation>Neben den Arbeitsstunden: so lange steht das Stück in den Zwingen.</translation>
    </message>
    <message>
        <source>Beside {slot}, open by then, the thin wall gives way to the drill.</source>
        <translation>Neben {slot}, dann schon offen, gibt die dünne Wand dem Bohrer nach.</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Bester</translation>
    </message>
    <message>
        <source>Best: </source>
        <translation>Bester: </translation>
    </message>
    <message>
        <source>Better places may help more than finer work.</source>
        <translation>Bessere Plätze helfen vielleicht mehr als feinere Arbeit.</translation>
    </message>
    <message>
        <source>Between square edge and seat the {one} and the {two} cut {measured} mm into each other.</source>
        <translation>Zwischen gerader Kante und Sitz schneiden sich {one} und {two} um {measured} mm.</translation>
    </message>
    <message>
        <source>Between square edge and seat the {one} and the {two} pass {a} mm apart; {b} mm wanted.</source>
        <translation>Zwischen gerader Kante und Sitz liegen {one} und {two} {a} mm auseinander; gewünscht sind {b} mm.</translation>
    </message>
    <message>
        <source>Between strings of a course</source>
        <translation>Zwischen Saiten eines Chors</translation>
    </message>
    <message>
        <source>Between the centres of the outer strings.</source>
        <translation>Zwischen den Mitten der äußeren Saiten.</translation>
    </message>
    <message>
        <source>Bit</source>
        <translation>Fräser</translation>
    </message>
    <message>
        <source>Bit and follower do not go together</source>
        <translation>Fräser und Führung passen nicht zusammen</translation>
    </message>
    <message>
        <source>Bit does not enter the slot</source>
        <translation>Fräser passt nicht in den Schlitz</translation>
    </message>
    <message>
        <source>Bit does not reach through</source>
        <translation>Fräser reicht nicht durch</translation>
    </message>
    <message>
        <source>Bit {bit}</source>
        <translation>Fräser {bit}</translation>
    </message>
    <message>
        <source>Blank</source>
        <translation>Rohling</translation>
    </message>
    <message>
        <source>Blank is too thick</source>
        <translation>Rohling ist zu dick</translation>
    </message>
    <message>
        <source>Blank: length past the nut line</source>
        <translation>Rohling: Länge ab der Sattellinie</translation>
    </message>
    <message>
        <source>Blank: thickness</source>
        <translation>Rohling: Dicke</translation>
    </message>
    <message>
        <source>Blank: width</source>
        <translation>Rohling: Breite</translation>
    </message>
    <message>
        <source>Blind</source>
        <translation>Nicht durchgehend</translation>
    </message>
    <message>
        <source>Block for the tilt</source>
        <translation>Klotz für die Neigung</translation>
    </message>
    <message>
        <source>Block heights</source>
        <translation>Klotzhöhen</translation>
    </message>
    <message>
        <source>Block heights for the tilts.</source>
        <translation>Klotzhöhen für die Neigungen.</translation>
    </message>
    <message>
        <source>Blocks are nested more than {deepest} deep: break them up in the program that drew them, and export again.</source>
        <translation>Blöcke sind tiefer als {deepest} verschachtelt: im zeichnenden Programm auflösen und erneut ausgeben.</translation>
    </message>
    <message>
        <source>Board between openings</source>
        <translation>Brett zwischen Öffnungen</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Bore deeper than the wood</source>
        <translation>Bohrung tiefer als das Holz</translation>
    </message>
    <message>
        <source>Bore stops in the rail</source>
        <translation>Bohrung endet in der Wange</translation>
    </message>
    <message>
        <source>Bore to bore</source>
        <translation>Bohrung zu Bohrung</translation>
    </message>
    <message>
        <source>Bore to outline</source>
        <translation>Bohrung zu Umriss</translation>
    </message>
    <message>
        <source>Bore to slot wall</source>
        <translation>Bohrung zu Schlitzwand</translation>
    </message>
    <message>
        <source>Bore {k}</source>
        <translation>Bohrung {k}</translation>
    </message>
    <message>
        <source>Bores cross a glue line</source>
        <translation>Bohrungen kreuzen eine Leimfuge</translation>
    </message>
    <message>
        <source>Bores from the side are planned here where they meet the finished outline: while the edges are square choose the measure at or from the square edge.</source>
        <translation>Seitenbohrungen sind hier dort geplant, wo sie den fertigen Umriss treffen: solange die Kanten gerade sind, das Maß an oder von der geraden Kante wählen.</translation>
    </message>
    <message>
        <source>Bores share a tilt</source>
        <translation>Bohrungen mit gleicher Neigung</translation>
    </message>
    <message>
        <source>Both edges at this node are arcs, which cannot meet without a corner here: make one of them a curve first.</source>
        <translation>Beide Kanten an diesem Knoten sind Bögen, die sich hier nicht ohne Ecke treffen können: zuerst eine in eine Kurve umwandeln.</translation>
    </message>
    <message>
        <source>Both square edges are there.</source>
        <translation>Beide geraden Kanten sind da.</translation>
    </message>
    <message>
        <source>Both veneers may stand in the clamps at once.</source>
        <translation>Beide Furniere können zugleich in den Zwingen stehen.</translation>
    </message>
    <message>
        <source>Bouzouki, eight strings</source>
        <translation>Bouzouki, acht Saiten</translation>
    </message>
    <message>
        <source>Boxes from the left: {slots}.</source>
        <translation>Kästchen von links: {slots}.</translation>
    </message>
    <message>
        <source>Break angle</source>
        <translation>Knickwinkel</translation>
    </message>
    <message>
        <source>Break angle over the nut in degrees: 7 to 17 is good.</source>
        <translation>Knickwinkel über dem Sattel in Grad: 7 bis 17 ist gut.</translation>
    </message>
    <message>
        <source>Bring back what the file held before it was saved last.</source>
        <translation>Zurückholen, was die Datei vor dem letzten Speichern enthielt.</translation>
    </message>
    <message>
        <source>Bring into &amp;line</source>
        <translation>In eine &amp;Flucht bringen</translation>
    </message>
    <message>
        <source>Bring into line</source>
        <translation>In eine Flucht bringen</translation>
    </message>
    <message>
        <source>Bring to one &amp;height</source>
        <translation>Auf eine &amp;Höhe bringen</translation>
    </message>
    <message>
        <source>Bring to one height</source>
        <translation>Auf eine Höhe bringen</translation>
    </message>
    <message>
        <source>Built on these libraries, each under its own licence:</source>
        <translation>Gebaut auf diesen Bibliotheken, jede unter ihrer eigenen Lizenz:</translation>
    </message>
    <message>
        <source>Button</source>
        <translation>Flügel</translation>
    </message>
    <message>
        <source>Button close to the wood</source>
        <translation>Flügel nahe am Holz</translation>
    </message>
    <message>
        <source>Button points</source>
        <translation>Flügel zeigt</translation>
    </message>
    <message>
        <source>Button to button</source>
        <translation>Flügel zu Flügel</translation>
    </message>
    <message>
        <source>Buttons close together</source>
        <translation>Flügel nahe beieinander</translation>
    </message>
    <message>
        <source>By the job book</source>
        <translation>Nach dem Werkbuch</translation>
    </message>
    <message>
        <source>By the minutes now set</source>
        <translation>Nach den jetzt eingestellten Minuten</translation>
    </message>
    <message>
        <source>By what the job book holds it takes about {hours:.1f}.</source>
        <translation>Nach dem Werkbuch dauert es etwa {hours:.1f}.</translation>
    </message>
    <message>
        <source>By what this job took</source>
        <translation>Nach dem, was diese Arbeit gebraucht hat</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Cannot be done here</source>
        <translation>Geht hier nicht</translation>
    </message>
    <message>
        <source>Cannot be done: {blocked}</source>
        <translation>Geht nicht: {blocked}</translation>
    </message>
    <message>
        <source>Cannot be done: {text}</source>
        <translation>Geht nicht: {text}</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>Cards: {number} of {cards}</source>
        <translation>Karten: {number} von {cards}</translation>
    </message>
    <message>
        <source>Carries a string retainer</source>
        <translation>Trägt einen Saitenniederhalter</translation>
    </message>
    <message>
        <source>Catch the grid, edges and neighbours while dragging.</source>
        <translation>Raster, Kanten und Nachbarn beim Ziehen fangen.</translation>
    </message>
    <message>
        <source>Cautions: wear eye and ear protection and a dust mask; no gloves, loose sleeves or loose hair near a turning bit or a blade. Guard the chuck and take its key out before you start. Hold the work in a vice, clamp or jig, back up every exit and keep your fingers out of the line of a blade. Stop the machine before you measure, unplug the router before you change its bit, and run no bit faster than is marked on it. Rout in light passes against the turning of the cutter, and never a small loose piece. Test on scrap. The manuals of your machines, the rules where you work and qualified instruction come first.</source>
        <translation>Vorsicht: Augen- und Gehörschutz und Staubmaske tragen; keine Handschuhe, losen Ärmel oder losen Haare bei drehendem Werkzeug oder Sägeblatt. Das Bohrfutter abdecken und seinen Schlüssel vor dem Einschalten abziehen. Das Werkstück in Schraubstock, Zwinge oder Vorrichtung halten, jeden Austritt hinterlegen, Finger nie in die Linie des Sägeblatts. Maschine anhalten, bevor Sie messen, vor dem Fräserwechsel den Stecker der Oberfräse ziehen, und kein Werkzeug schneller drehen lassen, als darauf steht. In leichten Durchgängen gegen die Drehung fräsen, nie ein kleines loses Teil. An Abfall erproben. Die Anleitungen Ihrer Maschinen, die Vorschriften an Ihrem Ort und fachkundige Unterweisung gehen vor.</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Centre to centre.</source>
        <translation>Von Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>Centreline to the bass edge</source>
        <translation>Mittellinie bis Basskante</translation>
    </message>
    <message>
        <source>Centreline to the treble edge</source>
        <translation>Mittellinie bis Diskantkante</translation>
    </message>
    <message>
        <source>Centres of {drill}, all {across}, from the {line}: {along}.</source>
        <translation>Mitten für {drill}, alle {across}, von der {line}: {along}.</translation>
    </message>
    <message>
        <source>Centres of {drill}, from the {line} (and from the centreline): {each}.</source>
        <translation>Mitten für {drill}, von der {line} (und von der Mittellinie): {each}.</translation>
    </message>
    <message>
        <source>Chan&amp;ges to this layout</source>
        <translation>Änderun&amp;gen an diesem Entwurf</translation>
    </message>
    <message>
        <source>Chance: being worked out…</source>
        <translation>Gelingen: wird berechnet…</translation>
    </message>
    <message>
        <source>Chances</source>
        <translation>Aussichten</translation>
    </message>
    <message>
        <source>Chances being worked out</source>
        <translation>Aussichten werden berechnet</translation>
    </message>
    <message>
        <source>Chances: {trouble}</source>
        <translation>Aussichten: {trouble}</translation>
    </message>
    <message>
        <source>Change a note</source>
        <translation>Eine Notiz ändern</translation>
    </message>
    <message>
        <source>Change left for right</source>
        <translation>Links gegen rechts tauschen</translation>
    </message>
    <message>
        <source>Change the bit</source>
        <translation>Das Werkzeug wechseln</translation>
    </message>
    <message>
        <source>Change the width of the nut</source>
        <translation>Breite des Sattels ändern</translation>
    </message>
    <message>
        <source>Change the {target}</source>
        <translation>Ändern: {target}</translation>
    </message>
    <message>
        <source>Change to {names} there.</source>
        <translation>Dort auf {names} wechseln.</translation>
    </message>
    <message>
        <source>Changed by another program</source>
        <translation>Von einem anderen Programm geändert</translation>
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
        <translation>Prüfen Sie die 100-mm-Balken auf dem Papier, bevor Sie es aufkleben, und probieren Sie den Plan an einem Abfallstück vor dem Rohling.</translation>
    </message>
    <message>
        <source>Choose a bit of the rack.</source>
        <translation>Einen Fräser aus dem Bestand wählen.</translation>
    </message>
    <message>
        <source>Choose a bit of {width} mm or less, or widen {opening} to {b} mm.</source>
        <translation>Einen Fräser von höchstens {width} mm wählen oder {opening} auf {b} mm verbreitern.</translation>
    </message>
    <message>
        <source>Choose a follower nearer the cutter's size, or make the tongue wider.</source>
        <translation>Eine Führung näher am Fräsermaß wählen oder die Zunge breiter machen.</translation>
    </message>
    <message>
        <source>Choose a longer bit or a thinner template.</source>
        <translation>Einen längeren Fräser oder eine dünnere Schablone wählen.</translation>
    </message>
    <message>
        <source>Choose a shaft {by} mm longer, or one that stands farther out.</source>
        <translation>Einen {by} mm längeren Schaft wählen, oder einen, der weiter außen steht.</translation>
    </message>
    <message>
        <source>Choose a smaller plate, or another place for the slot.</source>
        <translation>Eine kleinere Platte wählen oder den Schlitz anders legen.</translation>
    </message>
    <message>
        <source>Choose a smaller plate, or widen the outline there.</source>
        <translation>Eine kleinere Platte wählen oder den Umriss dort verbreitern.</translation>
    </message>
    <message>
        <source>Choose another bit or follower, or another thickness of template.</source>
        <translation>Einen anderen Fräser, eine andere Führung oder Schablonendicke wählen.</translation>
    </message>
    <message>
        <source>Choose another bit or guide bush.</source>
        <translation>Einen anderen Fräser oder eine andere Kopierhülse wählen.</translation>
    </message>
    <message>
        <source>Choose another plan</source>
        <translation>Einen anderen Plan wählen</translation>
    </message>
    <message>
        <source>Choose hardware with a longer post, or plane the head thinner.</source>
        <translation>Eine Mechanik mit längerer Welle wählen oder die Kopfplatte dünner hobeln.</translation>
    </message>
    <message>
        <source>Choose hardware with a longer post, or plane the head {needed} mm thinner.</source>
        <translation>Eine Mechanik mit längerer Welle wählen oder die Kopfplatte {needed} mm dünner hobeln.</translation>
    </message>
    <message>
        <source>Choose hardware with shorter posts, or slide one of the two along its edge.</source>
        <translation>Mechaniken mit kürzeren Wellen wählen oder eine der beiden an ihrer Kante verschieben.</translation>
    </message>
    <message>
        <source>Choose one loop as the outline.</source>
        <translation>Eine Linie als Umriss wählen.</translation>
    </message>
    <message>
        <source>Choose other hardware, glue on a veneer, or put washers under it.</source>
        <translation>Eine andere Mechanik wählen, ein Furnier aufleimen oder Scheiben unterlegen.</translation>
    </message>
    <message>
        <source>Choose other hardware, plane the head thinner, or let its plate into the back by {needed} mm.</source>
        <translation>Eine andere Mechanik wählen, die Kopfplatte dünner hobeln oder ihre Platte {needed} mm in die Rückseite einlassen.</translation>
    </message>
    <message>
        <source>Choose smaller buttons, or move both tuners.</source>
        <translation>Kleinere Flügel wählen oder beide Mechaniken versetzen.</translation>
    </message>
    <message>
        <source>Choose smaller plates, or move both tuners.</source>
        <translation>Kleinere Platten wählen oder beide Mechaniken versetzen.</translation>
    </message>
    <message>
        <source>Choose the hardware to place first.</source>
        <translation>Zuerst die Mechanik wählen.</translation>
    </message>
    <message>
        <source>Chop out what stands between the holes as far as it comes easily.</source>
        <translation>Ausstemmen, was zwischen den Bohrungen steht, soweit es leicht geht.</translation>
    </message>
    <message>
        <source>Chop out what stands between them as far as it comes easily.</source>
        <translation>Ausstemmen, was dazwischen steht, soweit es leicht geht.</translation>
    </message>
    <message>
        <source>Clamp the head flat and work the edge square to the line with spokeshave, rasp and file.</source>
        <translation>Die Kopfplatte flach einspannen und die Kante mit Schabhobel, Raspel und Feile rechtwinklig auf die Linie arbeiten.</translation>
    </message>
    <message>
        <source>Clean out the old holes, to the last bit of a screw that broke off in one, and glue in plugs of the same wood that fill them to the bottom, their grain along the head's: {which}. Let them dry and plane them flush. Each is drilled into as wood is.</source>
        <translation>Die alten Löcher säubern, bis zum letzten Rest einer abgebrochenen Schraube, und Stopfen aus demselben Holz einleimen, die sie bis zum Grund füllen, die Maserung längs wie die der Kopfplatte: {which}. Trocknen lassen und bündig hobeln. In jeden wird gebohrt wie in Holz.</translation>
    </message>
    <message>
        <source>Clean up</source>
        <translation>Säubern</translation>
    </message>
    <message>
        <source>Cleaning up plugs the pin holes that bring the template back.</source>
        <translation>Beim Säubern werden die Stiftlöcher verschlossen, die die Schablone zurückbringen.</translation>
    </message>
    <message>
        <source>Cleaning up takes the papers off, and their marks with them.</source>
        <translation>Beim Säubern kommen die Papiere ab und mit ihnen die Anrisse.</translation>
    </message>
    <message>
        <source>Clear or ream a bore by hand</source>
        <translation>Eine Bohrung von Hand ausräumen oder reiben</translation>
    </message>
    <message>
        <source>Clear the finish out of the counterbore of {of} by hand until the bushing presses in at {diameter}.</source>
        <translation>Die Senkung von {of} von Hand vom Lack befreien, bis sich die Buchse bei {diameter} eindrücken lässt.</translation>
    </message>
    <message>
        <source>Clear the finish out of the {operation} of {of} by hand until it is {diameter} wide again and its tuner goes in.</source>
        <translation>{operation} von {of}: von Hand vom Lack befreien, bis die Bohrung wieder {diameter} weit ist und die Mechanik hineingeht.</translation>
    </message>
    <message>
        <source>Clearance bore</source>
        <translation>Freibohrung</translation>
    </message>
    <message>
        <source>Climbing cut</source>
        <translation>Gleichlauf</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close every window; unsaved work is asked about in each.</source>
        <translation>Alle Fenster schließen; in jedem wird nach ungespeicherter Arbeit gefragt.</translation>
    </message>
    <message>
        <source>Close gaps up to</source>
        <translation>Lücken schließen bis</translation>
    </message>
    <message>
        <source>Close t&amp;he window</source>
        <translation>Fenster s&amp;chließen</translation>
    </message>
    <message>
        <source>Close this layout; unsaved work is asked about.</source>
        <translation>Diesen Entwurf schließen; nach ungespeicherter Arbeit wird gefragt.</translation>
    </message>
    <message>
        <source>Collets</source>
        <translation>Spannzangen</translation>
    </message>
    <message>
        <source>Colou&amp;rs</source>
        <translation>Farbe&amp;n</translation>
    </message>
    <message>
        <source>Comes out sound: being worked out…</source>
        <translation>Gelingt: wird berechnet…</translation>
    </message>
    <message>
        <source>Comes out sound: told once a tuner, a hole or a slot is drawn</source>
        <translation>Gelingt: abzuschätzen, sobald eine Mechanik, ein Loch oder ein Schlitz gezeichnet ist</translation>
    </message>
    <message>
        <source>Comes out sound: {chance}</source>
        <translation>Gelingt: {chance}</translation>
    </message>
    <message>
        <source>Common practice, no source, would be {usual}.</source>
        <translation>Übliche Praxis, ohne Quelle, wäre {usual}.</translation>
    </message>
    <message>
        <source>Common practice, no source: set what you trust.</source>
        <translation>Übliche Praxis, ohne Quelle: stellen Sie ein, worauf Sie vertrauen.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy &amp;bass to treble</source>
        <translation>&amp;Bass auf Diskant kopieren</translation>
    </message>
    <message>
        <source>Copy bass to treble</source>
        <translation>Bass auf Diskant kopieren</translation>
    </message>
    <message>
        <source>Copy in the rack</source>
        <translation>Im Bestand kopieren</translation>
    </message>
    <message>
        <source>Copy the layout's rack to where your own is kept for all layouts.</source>
        <translation>Den Bestand des Entwurfs dorthin kopieren, wo Ihr eigener für alle Entwürfe liegt.</translation>
    </message>
    <message>
        <source>Copy the report</source>
        <translation>Den Bericht kopieren</translation>
    </message>
    <message>
        <source>Copy the versions</source>
        <translation>Versionen kopieren</translation>
    </message>
    <message>
        <source>Copy treble to bass</source>
        <translation>Diskant auf Bass kopieren</translation>
    </message>
    <message>
        <source>Copy tuners, slots, pins and holes.</source>
        <translation>Mechaniken, Schlitze, Stifte und Bohrungen kopieren.</translation>
    </message>
    <message>
        <source>Copy your own rack into the layout. Choices of bits that it does not hold are dropped.</source>
        <translation>Ihren eigenen Bestand in den Entwurf kopieren. Gewählte Fräser, die er nicht enthält, werden abgewählt.</translation>
    </message>
    <message>
        <source>Corner 1 is the upper left one in the picture, 2 upper right, 3 lower right, 4 lower left. The picture is set straight by them.</source>
        <translation>Ecke 1 ist im Bild oben links, 2 oben rechts, 3 unten rechts, 4 unten links. Das Bild wird danach entzerrt.</translation>
    </message>
    <message>
        <source>Corner 1 to 2</source>
        <translation>Ecke 1 bis 2</translation>
    </message>
    <message>
        <source>Corner 2 to 3</source>
        <translation>Ecke 2 bis 3</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Ecken</translation>
    </message>
    <message>
        <source>Corners of wood rounded</source>
        <translation>Gerundete Holzecken</translation>
    </message>
    <message>
        <source>Corners tighter than the cutter</source>
        <translation>Ecken enger als der Fräser</translation>
    </message>
    <message>
        <source>Correct a printer</source>
        <translation>Einen Drucker korrigieren</translation>
    </message>
    <message>
        <source>Correct a printer…</source>
        <translation>Einen Drucker korrigieren…</translation>
    </message>
    <message>
        <source>Corrected by what the timed steps took.</source>
        <translation>Berichtigt nach dem, was gestoppte Schritte gebraucht haben.</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Ausgaben</translation>
    </message>
    <message>
        <source>Counter-clockwise from straight across to the treble side.</source>
        <translation>Gegen den Uhrzeigersinn von quer zur Diskantseite.</translation>
    </message>
    <message>
        <source>Counter-clockwise from straight across to the treble side. Buttons that all point one way turn with it.</source>
        <translation>Gegen den Uhrzeigersinn von quer zur Diskantseite. Flügel, die alle in eine Richtung zeigen, drehen sich mit.</translation>
    </message>
    <message>
        <source>Counterbore</source>
        <translation>Senkung</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Chor</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Deckblatt</translation>
    </message>
    <message>
        <source>Ctrl and arrow keys</source>
        <translation>Strg und Pfeiltasten</translation>
    </message>
    <message>
        <source>Ctrl+Enter makes the move that cures the snag in hand</source>
        <translation>Strg+Eingabe macht den Schritt, der den gewählten Haken behebt</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>A&amp;usschneiden</translation>
    </message>
    <message>
        <source>Cure: {cure}</source>
        <translation>Abhilfe: {cure}</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>Cut a flat for a plate</source>
        <translation>Eine Fläche für eine Platte schneiden</translation>
    </message>
    <message>
        <source>Cut a flat for it, level with the middle of its seat, or slide it to where the edge is straighter.</source>
        <translation>Eine Fläche dafür ausarbeiten, auf Höhe der Mitte ihres Sitzes, oder an eine geradere Stelle der Kante schieben.</translation>
    </message>
    <message>
        <source>Cut a flat {deep} mm deep for it, or slide it to where the edge is straighter.</source>
        <translation>Eine {deep} mm tiefe Fläche dafür ausarbeiten oder an eine geradere Stelle der Kante schieben.</translation>
    </message>
    <message>
        <source>Cut from a board</source>
        <translation>Aus einem Brett</translation>
    </message>
    <message>
        <source>Cut it on to what the drawing says, unless it came out so, and tick its steps again; or put the drawing back.</source>
        <translation>Auf das Maß der Zeichnung weiterarbeiten, wenn es nicht schon so ausgefallen ist, und die Schritte noch einmal abhaken; oder die Zeichnung zurückstellen.</translation>
    </message>
    <message>
        <source>Cut it out along the outline and glue it on the face of the sawn head, {line} on {line} and centreline on centreline: there are no square edges left to fold it round.</source>
        <translation>Entlang dem Umriss ausschneiden und auf die Vorderseite der gesägten Kopfplatte kleben, {line} auf {line} und Mittellinie auf Mittellinie: Gerade Kanten, um die er gefaltet würde, gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>Cut it out, fold it back along both fold lines and glue it on the square blank, {line} on {line}: it marks the face and both edges.</source>
        <translation>Ausschneiden, an beiden Falzlinien zurückfalten und auf den geraden Rohling kleben, {line} auf {line}: er zeigt Vorderseite und beide Kanten.</translation>
    </message>
    <message>
        <source>Cut it {needed} mm larger.</source>
        <translation>Um {needed} mm größer ausarbeiten.</translation>
    </message>
    <message>
        <source>Cut its flat {deep} mm deeper.</source>
        <translation>Ihre Fläche {deep} mm tiefer ausarbeiten.</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Zuschnittliste</translation>
    </message>
    <message>
        <source>Cut list and parts</source>
        <translation>Zuschnitt und Teile</translation>
    </message>
    <message>
        <source>Cut otherwise</source>
        <translation>Anders ausgearbeitet</translation>
    </message>
    <message>
        <source>Cut the flat {by} mm shallower, or move one of the two.</source>
        <translation>Die Fläche {by} mm flacher ausarbeiten oder eines von beiden versetzen.</translation>
    </message>
    <message>
        <source>Cut the flat {needed} mm shallower, or make {opening} narrower.</source>
        <translation>Die Fläche {needed} mm flacher ausarbeiten oder {opening} schmaler machen.</translation>
    </message>
    <message>
        <source>Cut the flat {needed} mm shallower.</source>
        <translation>Die Fläche {needed} mm flacher ausarbeiten.</translation>
    </message>
    <message>
        <source>Cut the template to its paper, true its edges, and mark centreline and {line} on both of its sides.</source>
        <translation>Die Schablone nach ihrem Papier schneiden, Kanten nacharbeiten, Mittellinie und {line} auf beiden Seiten anreißen.</translation>
    </message>
    <message>
        <source>Cut two templates to the paper: openings and pin holes in a board as large as the blank, and another along the outside line for the outline; true their edges, and mark centreline and {line} on both of their sides.</source>
        <translation>Zwei Schablonen nach dem Papier schneiden: Öffnungen und Stiftlöcher in ein Brett so groß wie der Rohling, eine zweite entlang der äußeren Linie für den Umriss; Kanten nacharbeiten, Mittellinie und {line} auf beiden Seiten beider Bretter anreißen.</translation>
    </message>
    <message>
        <source>Cut {name}</source>
        <translation>{name} ausschneiden</translation>
    </message>
    <message>
        <source>Cut {n} things</source>
        <translation>{n} Teile ausschneiden</translation>
    </message>
    <message>
        <source>Cut, and gone from the drawing</source>
        <translation>Ausgearbeitet, und nicht mehr in der Zeichnung</translation>
    </message>
    <message>
        <source>Cuts its sides off at the nut line, or lets them go straight on to it. What sits on its edges stays where it is.</source>
        <translation>Schneidet seine Seiten an der Sattellinie ab oder lässt sie geradeaus bis zu ihr gehen. Was auf seinen Kanten sitzt, bleibt, wo es ist.</translation>
    </message>
    <message>
        <source>Cutter</source>
        <translation>Ø</translation>
    </message>
    <message>
        <source>Cutter diameter</source>
        <translation>Schneide, Durchmesser</translation>
    </message>
    <message>
        <source>Cutting length</source>
        <translation>Schneidenlänge</translation>
    </message>
    <message>
        <source>DXF, SVG, PDF and the hole table.</source>
        <translation>DXF, SVG, PDF und die Bohrtabelle.</translation>
    </message>
    <message>
        <source>Dark colours; the same key goes back to the light ones.</source>
        <translation>Dunkle Farben; dieselbe Taste führt zu den hellen zurück.</translation>
    </message>
    <message>
        <source>Dashed heavy: the router runs against the grain or across it. Arrows: the way to feed.</source>
        <translation>Dick gestrichelt: gegen die Faser oder quer dazu. Pfeile: Vorschubrichtung.</translation>
    </message>
    <message>
        <source>Deep enough for the plate: {depth}</source>
        <translation>Tief genug für die Platte: {depth}</translation>
    </message>
    <message>
        <source>Deep enough that the plate lies on wood from end to end.</source>
        <translation>So tief, dass die Platte von Ende zu Ende auf Holz liegt.</translation>
    </message>
    <message>
        <source>Deeper than the drill is long</source>
        <translation>Tiefer, als der Bohrer lang ist</translation>
    </message>
    <message>
        <source>Deeper than the quill travels</source>
        <translation>Tiefer als der Pinolenhub</translation>
    </message>
    <message>
        <source>Degrees aside at the nut: up to 6 is good, up to 10 tolerable.</source>
        <translation>Grad seitlich am Sattel: bis 6 ist gut, bis 10 geht noch.</translation>
    </message>
    <message>
        <source>Deliberate: hole meets slot. A screw hole for a cover stands 1.4 mm from the slot's wall where 3 mm are wanted. Only the web between the slots is free.</source>
        <translation>Absichtlich: Bohrung trifft Schlitz. Eine Schraubenbohrung für einen Deckel steht 1,4 mm von der Schlitzwand, wo 3 mm verlangt sind. Nur der Steg zwischen den Schlitzen ist frei.</translation>
    </message>
    <message>
        <source>Deliberate: locating pin close to the outline. It leaves 2.2 mm of wood where 3 mm are wanted, and would tear out when the outline is routed. Drag it inward until the ring is gone, or press Do this on its card.</source>
        <translation>Absichtlich: Passstift nahe am Umriss. Er lässt 2,2 mm Holz, wo 3 mm verlangt sind, und würde beim Fräsen des Umrisses ausreißen. Nach innen ziehen, bis der Ring fort ist, oder auf seiner Karte Ausführen drücken.</translation>
    </message>
    <message>
        <source>Deliberate: plates too close. The plate was slid 8 mm towards the nut, over its neighbour's. Make the three a row along the edge, and one spacing keeps them apart.</source>
        <translation>Absichtlich: Platten zu nah. Die Platte wurde 8 mm zum Sattel geschoben, über die ihrer Nachbarin. Aus den dreien eine Reihe entlang der Kante machen, dann hält ein Abstand sie auseinander.</translation>
    </message>
    <message>
        <source>Deliberate: slid 10 mm towards the nut. Buttons close together: there is no room for fingers. Side bore meets screw: seen from the face they only seem to pass, in the wood the bore cuts the screw of treble face 2. Counterbore meets screw: the screw of the side plate runs into the counterbore. Slide it back, and all three go together.</source>
        <translation>Absichtlich: 10 mm zum Sattel geschoben. Flügel nahe beieinander: für Finger ist kein Platz. Seitenbohrung trifft Schraube: von der Vorderseite gesehen scheinen sie nur vorbeizugehen, im Holz schneidet die Bohrung die Schraube von Diskantseite vorn 2. Senkung trifft Schraube: die Schraube der Seitenplatte läuft in die Senkung. Zurückschieben, und alle drei gehen zugleich fort.</translation>
    </message>
    <message>
        <source>Deliberate: string beside the slot's wall. The slot was moved 1.5 mm outward, and the string of bass 3 now rubs on its wall. The wood still holds: what a slot has to clear is the string as well as the post.</source>
        <translation>Absichtlich: Saite an der Schlitzwand. Der Schlitz wurde 1,5 mm nach außen gerückt, und die Saite von Bassseite 3 reibt nun an seiner Wand. Das Holz hält noch: frei sein muss ein Schlitz für die Saite wie für die Welle.</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Depth at the slot</source>
        <translation>Tiefe am Schlitz</translation>
    </message>
    <message>
        <source>Depth of the flat</source>
        <translation>Tiefe der Fläche</translation>
    </message>
    <message>
        <source>Depth stop</source>
        <translation>Tiefenanschlag</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Digits while dragging</source>
        <translation>Ziffern beim Ziehen</translation>
    </message>
    <message>
        <source>Digits, with a tool in hand</source>
        <translation>Ziffern, mit einem Werkzeug in der Hand</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Distances along the head are from the base line, square to the centreline through the middle of the nut.</source>
        <translation>Längs wird von der Grundlinie gemessen: rechtwinklig zur Mittellinie durch die Mitte des Sattels.</translation>
    </message>
    <message>
        <source>Distances between two holes, and how: over the wood left between, between the far walls, over pins</source>
        <translation>Abstände zwischen zwei Bohrungen, und wie: über das Holz dazwischen, zwischen den fernen Wänden, über Stifte</translation>
    </message>
    <message>
        <source>Do differently ({piece}): {note}</source>
        <translation>Anders machen ({piece}): {note}</translation>
    </message>
    <message>
        <source>Do differently: {what}</source>
        <translation>Anders machen: {what}</translation>
    </message>
    <message>
        <source>Do it</source>
        <translation>Ausführen</translation>
    </message>
    <message>
        <source>Do not cut from these sheets yet, something spoils the work: {first}{rest}.</source>
        <translation>Noch nicht nach diesen Blättern schneiden, etwas verdirbt die Arbeit: {first}{rest}.</translation>
    </message>
    <message>
        <source>Do not cut from these sheets yet: something spoils the work, see {command}.</source>
        <translation>Noch nicht nach diesen Blättern schneiden: etwas verdirbt die Arbeit, siehe {command}.</translation>
    </message>
    <message>
        <source>Do not print</source>
        <translation>Nicht drucken</translation>
    </message>
    <message>
        <source>Do not tell me again</source>
        <translation>Nicht mehr daran erinnern</translation>
    </message>
    <message>
        <source>Do not wait</source>
        <translation>Nicht warten</translation>
    </message>
    <message>
        <source>Do not work in this order: {n} step in it is impossible or unsafe. Put it in its place, or go back to the best order.</source>
        <translation>Nicht in dieser Folge arbeiten: {n} Schritt darin ist unmöglich oder unsicher. An seinen Platz setzen oder zur besten Folge zurückgehen.</translation>
    </message>
    <message>
        <source>Do not work in this order: {n} steps in it are impossible or unsafe. Put them in their places, or go back to the best order.</source>
        <translation>Nicht in dieser Folge arbeiten: {n} Schritte darin sind unmöglich oder unsicher. An ihre Plätze setzen oder zur besten Folge zurückgehen.</translation>
    </message>
    <message>
        <source>Do nothing</source>
        <translation>Nichts tun</translation>
    </message>
    <message>
        <source>Do this</source>
        <translation>Ausführen</translation>
    </message>
    <message>
        <source>Do this differently</source>
        <translation>Das anders machen</translation>
    </message>
    <message>
        <source>Does not come out sound as drawn</source>
        <translation>So gezeichnet gelingt es nicht</translation>
    </message>
    <message>
        <source>Done again: {name}</source>
        <translation>Wiederholt: {name}</translation>
    </message>
    <message>
        <source>Done this early, it makes {names} impossible</source>
        <translation>So früh getan macht er {names} unmöglich</translation>
    </message>
    <message>
        <source>Done this early, it makes {names} unsafe</source>
        <translation>So früh getan macht er {names} unsicher</translation>
    </message>
    <message>
        <source>Double click on an edge</source>
        <translation>Doppelklick auf eine Kante</translation>
    </message>
    <message>
        <source>Double-click the edge to add a node, a node to make it smooth or a corner. Hold a node to type its place.</source>
        <translation>Ein Doppelklick auf die Kante fügt einen Knoten hinzu, auf einen Knoten macht er ihn glatt oder zur Ecke. Einen Knoten halten, um seinen Ort einzugeben.</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Knick</translation>
    </message>
    <message>
        <source>Down, to the back</source>
        <translation>Hinab, zur Rückseite</translation>
    </message>
    <message>
        <source>Drag a step to move it, or press Alt+Up and Alt+Down. Press its box, or Space, when it is done.</source>
        <translation>Einen Schritt ziehen, oder Alt+Auf und Alt+Ab drücken. Sein Kästchen anklicken oder die Leertaste drücken, wenn er erledigt ist.</translation>
    </message>
    <message>
        <source>Drag one of them to move all, arrow keys nudge them, Delete removes them.</source>
        <translation>Einen davon ziehen bewegt alle, die Pfeiltasten rücken sie, Entf nimmt sie weg.</translation>
    </message>
    <message>
        <source>Drag the picture behind the drawing, with Shift turn it about the middle of the nut.</source>
        <translation>Das Bild hinter der Zeichnung ziehen, mit Umschalt um die Mitte des Sattels drehen.</translation>
    </message>
    <message>
        <source>Drag the picture; with Shift it turns about the middle of the nut.</source>
        <translation>Das Bild ziehen; mit Umschalt dreht es sich um die Mitte des Sattels.</translation>
    </message>
    <message>
        <source>Drag the picture; with Shift turn it about the middle of the nut.</source>
        <translation>Das Bild ziehen; mit Umschalt um die Mitte des Sattels drehen.</translation>
    </message>
    <message>
        <source>Drag the two marks to the ends of the nut: it comes to lie on the nut line, its middle on the centreline.</source>
        <translation>Die beiden Marken auf die Enden des Sattels ziehen: er kommt auf die Sattellinie, seine Mitte auf die Mittellinie.</translation>
    </message>
    <message>
        <source>Drag to turn, roll the wheel to come closer. Arrow keys turn, + and - come closer or step back.</source>
        <translation>Ziehen dreht, das Rad bringt näher. Pfeiltasten drehen, + und - holen heran oder gehen zurück.</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Zeichnen</translation>
    </message>
    <message>
        <source>Draw a new outline: press for each node, close it on the first.</source>
        <translation>Einen neuen Umriss zeichnen: für jeden Knoten klicken, auf dem ersten schließen.</translation>
    </message>
    <message>
        <source>Draw a slot of any shape.</source>
        <translation>Einen Schlitz beliebiger Form zeichnen.</translation>
    </message>
    <message>
        <source>Draw at least one edge before closing.</source>
        <translation>Vor dem Schließen mindestens eine Kante zeichnen.</translation>
    </message>
    <message>
        <source>Draw it as it is glued on; or, where it is glued on anew, tick its step again.</source>
        <translation>So zeichnen, wie es angeleimt ist; oder, wenn es neu angeleimt ist, seinen Schritt noch einmal abhaken.</translation>
    </message>
    <message>
        <source>Draw it yourself</source>
        <translation>Selbst zeichnen</translation>
    </message>
    <message>
        <source>Draw the outline</source>
        <translation>Umriss zeichnen</translation>
    </message>
    <message>
        <source>Draw the outline again.</source>
        <translation>Den Umriss neu zeichnen.</translation>
    </message>
    <message>
        <source>Draw the outline as it is cut</source>
        <translation>Den Umriss zeichnen, wie er ausgearbeitet ist</translation>
    </message>
    <message>
        <source>Draw the outline at the nut line {half} mm to either side of the centreline, on which the middle of the nut lies.</source>
        <translation>Den Umriss an der Sattellinie {half} mm nach beiden Seiten der Mittellinie zeichnen: auf ihr liegt die Mitte des Sattels.</translation>
    </message>
    <message>
        <source>Draw the outline past {opening}, or fill that with wood first.</source>
        <translation>Den Umriss an {opening} vorbeiführen oder die Tasche zuerst mit Holz füllen.</translation>
    </message>
    <message>
        <source>Draw the outline {by} mm wider to that side at the nut line, or set the strings closer together in the nut.</source>
        <translation>Den Umriss an der Sattellinie auf dieser Seite {by} mm breiter zeichnen oder die Saiten im Sattel enger setzen.</translation>
    </message>
    <message>
        <source>Draw the shape or import it.</source>
        <translation>Die Form zeichnen oder einlesen.</translation>
    </message>
    <message>
        <source>Draw {ids}</source>
        <translation>{ids} zeichnen</translation>
    </message>
    <message>
        <source>Draw {into}</source>
        <translation>{into} zeichnen</translation>
    </message>
    <message>
        <source>Draw {slot} as it is cut</source>
        <translation>{slot} so zeichnen, wie der Schlitz ausgearbeitet ist</translation>
    </message>
    <message>
        <source>Drawings (*.dxf *.svg)</source>
        <translation>Zeichnungen (*.dxf *.svg)</translation>
    </message>
    <message>
        <source>Drawn by hand</source>
        <translation>Von Hand gezeichnet</translation>
    </message>
    <message>
        <source>Drawn slot</source>
        <translation>Gezeichneter Schlitz</translation>
    </message>
    <message>
        <source>Drill</source>
        <translation>Bohrer</translation>
    </message>
    <message>
        <source>Drill a bore from the side</source>
        <translation>Von der Seite bohren</translation>
    </message>
    <message>
        <source>Drill a hole</source>
        <translation>Ein Loch bohren</translation>
    </message>
    <message>
        <source>Drill a pilot by hand</source>
        <translation>Von Hand vorbohren</translation>
    </message>
    <message>
        <source>Drill a waste hole</source>
        <translation>Eine Räumbohrung bohren</translation>
    </message>
    <message>
        <source>Drill it from the face.</source>
        <translation>Von der Vorderseite bohren.</translation>
    </message>
    <message>
        <source>Drill it less deep, or draw the arms of {opening} farther apart.</source>
        <translation>Weniger tief bohren oder die Arme von {opening} weiter auseinander zeichnen.</translation>
    </message>
    <message>
        <source>Drill it on to what the drawing says, unless it came out so, and tick its step again; or put the drawing back.</source>
        <translation>Auf das Maß der Zeichnung weiterbohren, wenn es nicht schon so ausgefallen ist, und den Schritt noch einmal abhaken; oder die Zeichnung zurückstellen.</translation>
    </message>
    <message>
        <source>Drill it through.</source>
        <translation>Durchgehend bohren.</translation>
    </message>
    <message>
        <source>Drill it {amount} mm less deep, or draw the arms of {opening} that much farther apart.</source>
        <translation>{amount} mm weniger tief bohren oder die Arme von {opening} um so viel weiter auseinander zeichnen.</translation>
    </message>
    <message>
        <source>Drill it {amount} mm less deep, or move {opening} away by {amount} mm.</source>
        <translation>{amount} mm weniger tief bohren oder {opening} um {amount} mm wegrücken.</translation>
    </message>
    <message>
        <source>Drill it {lacking} mm deeper, or move {own} that much nearer.</source>
        <translation>{lacking} mm tiefer bohren oder {own} ebenso viel näher setzen.</translation>
    </message>
    <message>
        <source>Drill it {lacking} mm deeper.</source>
        <translation>{lacking} mm tiefer bohren.</translation>
    </message>
    <message>
        <source>Drill it {narrow} mm or narrower, or ream it wider.</source>
        <translation>Mit {narrow} mm oder enger bohren oder weiter aufreiben.</translation>
    </message>
    <message>
        <source>Drill it {needed} mm less deep, choose shorter hardware, or reshape the outline.</source>
        <translation>{needed} mm weniger tief bohren, kürzere Mechaniken wählen oder den Umriss ändern.</translation>
    </message>
    <message>
        <source>Drill it {needed} mm less deep.</source>
        <translation>{needed} mm weniger tief bohren.</translation>
    </message>
    <message>
        <source>Drill of nearly that size</source>
        <translation>Bohrer fast dieser Größe</translation>
    </message>
    <message>
        <source>Drill point comes through</source>
        <translation>Bohrerspitze kommt durch</translation>
    </message>
    <message>
        <source>Drill point scars the inner wall</source>
        <translation>Bohrerspitze trifft die Innenwand</translation>
    </message>
    <message>
        <source>Drill press</source>
        <translation>Bohrmaschine</translation>
    </message>
    <message>
        <source>Drill press: clamp the work so that the drill cannot turn it, guard the chuck, take the key out before starting, wear eye protection and nothing loose, back the exit with a spoil board, expect the drill to grab as it breaks through. For a tilted bore fix table and work, start from a centre mark, feed slowly.</source>
        <translation>Bohrmaschine: das Werkstück so spannen, dass der Bohrer es nicht mitdreht, das Futter abdecken, den Schlüssel vor dem Anlaufen abziehen, Augenschutz und nichts Loses tragen, den Austritt mit einem Opferbrett hinterlegen, darauf gefasst sein, dass der Bohrer beim Durchbruch greift. Für eine geneigte Bohrung Tisch und Werkstück fixieren, ankörnen, langsam vorschieben.</translation>
    </message>
    <message>
        <source>Drill the holes of the pins that stand inside the outline through both boards at once.</source>
        <translation>Die Löcher der Stifte, die innerhalb des Umrisses stehen, durch beide Bretter auf einmal bohren.</translation>
    </message>
    <message>
        <source>Drill the waste out of {slot}: {n} hole with {drill}, {how}.</source>
        <translation>Abfall ausbohren, {slot}: {n} Bohrung mit {drill}, {how}.</translation>
    </message>
    <message>
        <source>Drill the waste out of {slot}: {n} holes with {drill}, {how}.</source>
        <translation>Abfall ausbohren, {slot}: {n} Bohrungen mit {drill}, {how}.</translation>
    </message>
    <message>
        <source>Drill the {bores} of all {pattern} deeper by {by}</source>
        <translation>{bores} aller {pattern} um {by} tiefer bohren</translation>
    </message>
    <message>
        <source>Drill the {bores} of all {pattern} less deep by {by}</source>
        <translation>{bores} aller {pattern} um {by} weniger tief bohren</translation>
    </message>
    <message>
        <source>Drill wander in 50 mm</source>
        <translation>Verlaufen des Bohrers auf 50 mm</translation>
    </message>
    <message>
        <source>Drill would skate</source>
        <translation>Bohrer würde wegrutschen</translation>
    </message>
    <message>
        <source>Drill {item} less deep by {by} mm there, or use a drill with a shorter point.</source>
        <translation>Bei {item} dort {by} mm weniger tief bohren oder einen Bohrer mit kürzerer Spitze nehmen.</translation>
    </message>
    <message>
        <source>Drill {what} deeper by {by}</source>
        <translation>{what} um {by} tiefer bohren</translation>
    </message>
    <message>
        <source>Drill {what} less deep by {by}</source>
        <translation>{what} um {by} weniger tief bohren</translation>
    </message>
    <message>
        <source>Drilled from the</source>
        <translation>Gebohrt von</translation>
    </message>
    <message>
        <source>Drilled otherwise</source>
        <translation>Anders gebohrt</translation>
    </message>
    <message>
        <source>Drilled, and gone from the drawing</source>
        <translation>Gebohrt, und nicht mehr in der Zeichnung</translation>
    </message>
    <message>
        <source>Drills</source>
        <translation>Bohrer</translation>
    </message>
    <message>
        <source>Drills, bits and machines</source>
        <translation>Bohrer, Fräser und Maschinen</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>E, Shift+E</source>
        <translation>E, Umschalt+E</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Je</translation>
    </message>
    <message>
        <source>Each is drawn from its own layout. A copy opens; the sample stays.</source>
        <translation>Jedes ist aus seinem eigenen Entwurf gezeichnet. Geöffnet wird eine Kopie; das Beispiel bleibt.</translation>
    </message>
    <message>
        <source>Each string needs a slot of its own in the nut, with some of it left between two.</source>
        <translation>Jede Saite braucht ihre eigene Kerbe im Sattel, und zwischen zweien muss etwas von ihm bleiben.</translation>
    </message>
    <message>
        <source>Each: {words}</source>
        <translation>Jeweils: {words}</translation>
    </message>
    <message>
        <source>Ear</source>
        <translation>Ohr</translation>
    </message>
    <message>
        <source>Ear ends too soon</source>
        <translation>Ohr endet zu früh</translation>
    </message>
    <message>
        <source>Ear {id} belongs to the blank and is not copied.</source>
        <translation>Ohr {id} gehört zum Rohling und wird nicht kopiert.</translation>
    </message>
    <message>
        <source>Ear, {id}</source>
        <translation>Ohr, {id}</translation>
    </message>
    <message>
        <source>Ear: {ear}</source>
        <translation>Ohr: {ear}</translation>
    </message>
    <message>
        <source>Earlier changes are kept no longer</source>
        <translation>Frühere Änderungen werden nicht mehr aufbewahrt</translation>
    </message>
    <message>
        <source>Ears are glued before anything crosses the glue line.</source>
        <translation>Ohren werden angeleimt, bevor etwas die Leimfuge kreuzt.</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>Edge to the next node</source>
        <translation>Kante zum nächsten Knoten</translation>
    </message>
    <message>
        <source>Edges</source>
        <translation>Schneide</translation>
    </message>
    <message>
        <source>Edges: diameter, tilt of the table and the end that is raised for it, stop from the square edge to full diameter.</source>
        <translation>Kanten: Durchmesser, Tischneigung und das Ende, das dafür angehoben wird, Bohrtiefe von der geraden Kante bis zum vollen Durchmesser.</translation>
    </message>
    <message>
        <source>Eight strings, four a side</source>
        <translation>Acht Saiten, vier je Seite</translation>
    </message>
    <message>
        <source>Emptying {slot} takes {pin} away, and the template no longer finds its place.</source>
        <translation>Das Räumen von {slot} nimmt {pin} mit, und die Schablone findet ihren Platz nicht mehr.</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>End grain over {length} at {middle}: go lightly, and back up the corner at {last}, where the fibres break away.</source>
        <translation>Hirnholz auf {length} bei {middle}: leicht führen und die Ecke bei {last}, wo die Fasern ausbrechen, hinterlegen.</translation>
    </message>
    <message>
        <source>End of the post</source>
        <translation>Ende der Welle</translation>
    </message>
    <message>
        <source>End the outline along the nut line</source>
        <translation>Den Umriss an der Sattellinie enden lassen</translation>
    </message>
    <message>
        <source>Ends, from the {line}</source>
        <translation>Endet, von der {line}</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Enter a longer drill in the rack.</source>
        <translation>Einen längeren Bohrer in den Bestand eintragen.</translation>
    </message>
    <message>
        <source>Enter the drill in the rack, or change the hardware pattern to one you have.</source>
        <translation>Den Bohrer in den Bestand eintragen oder das Bohrbild auf einen vorhandenen ändern.</translation>
    </message>
    <message>
        <source>Enter what the two 100 mm bars of a page measure.</source>
        <translation>Eintragen, was die beiden 100-mm-Balken einer Seite messen.</translation>
    </message>
    <message>
        <source>Enter what the two 100 mm bars of a printed page measure.</source>
        <translation>Eintragen, was die beiden 100-mm-Balken einer gedruckten Seite messen.</translation>
    </message>
    <message>
        <source>Enter, on a stage or a tool</source>
        <translation>Eingabe, auf einem Bereich oder Werkzeug</translation>
    </message>
    <message>
        <source>Entry mark</source>
        <translation>Anriss</translation>
    </message>
    <message>
        <source>Equal centres put thick and thin strings at even steps; equal gaps leave even room between them.</source>
        <translation>Gleiche Mittenabstände setzen dicke und dünne Saiten in gleichen Schritten; gleiche Lücken lassen gleichen Platz dazwischen.</translation>
    </message>
    <message>
        <source>Equal steps along the edge, and they stay a row: one spacing for all.</source>
        <translation>Gleiche Schritte entlang der Kante, und es bleibt eine Reihe: ein Abstand für alle.</translation>
    </message>
    <message>
        <source>Equal steps along the edge, measured on the curve.</source>
        <translation>Gleiche Schritte entlang der Kante, auf der Kurve gemessen.</translation>
    </message>
    <message>
        <source>Equal steps on a line, and they stay a row: one spacing for all.</source>
        <translation>Gleiche Schritte auf einer Linie, und es bleibt eine Reihe: ein Abstand für alle.</translation>
    </message>
    <message>
        <source>Equal steps on the line from the first tuner to the last.</source>
        <translation>Gleiche Schritte auf der Linie von der ersten zur letzten Mechanik.</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Every beginning can be changed in all its parts, and nothing is saved until you say so.</source>
        <translation>Jeder Anfang lässt sich in allen Teilen ändern, und nichts wird gespeichert, bevor Sie es sagen.</translation>
    </message>
    <message>
        <source>Every drilling with its mark, tilt and stop; the same table is in the CSV file.</source>
        <translation>Jeder Bohrgang mit Anriss, Neigung und Bohrtiefe; dieselbe Tabelle steht in der CSV-Datei.</translation>
    </message>
    <message>
        <source>Every loop of the same size on the same layer becomes what the chosen one becomes.</source>
        <translation>Jede Linie gleicher Größe auf derselben Ebene wird zu dem, was die gewählte wird.</translation>
    </message>
    <message>
        <source>Every operation in the order in which it is done at the bench, so that nothing becomes impossible.</source>
        <translation>Alle Arbeitsgänge in der Folge, in der sie an der Werkbank getan werden, damit nichts unmöglich wird.</translation>
    </message>
    <message>
        <source>Every setting, a semicolon between them, or a comma and a space.</source>
        <translation>Jede Stufe, dazwischen ein Strichpunkt, oder ein Komma und ein Leerzeichen.</translation>
    </message>
    <message>
        <source>Every step with a box to tick, set-up after set-up.</source>
        <translation>Jeder Schritt mit einem Kästchen zum Abhaken, Einstellung für Einstellung.</translation>
    </message>
    <message>
        <source>Every string already has its best post.</source>
        <translation>Jede Saite hat schon ihre beste Welle.</translation>
    </message>
    <message>
        <source>Every string bends by {good:g} degrees or more over the nut: none wants a retainer.</source>
        <translation>Jede Saite knickt über dem Sattel um {good:g} Grad oder mehr ab: Keine braucht einen Niederhalter.</translation>
    </message>
    <message>
        <source>Everything could be {times:g} times rougher.</source>
        <translation>Alles dürfte {times:g}-mal gröber sein.</translation>
    </message>
    <message>
        <source>Everything times</source>
        <translation>Alles mal</translation>
    </message>
    <message>
        <source>Expected a list</source>
        <translation>Erwartet wird eine Liste</translation>
    </message>
    <message>
        <source>Expected a list of at least {n} entries</source>
        <translation>Erwartet wird eine Liste von mindestens {n} Einträgen</translation>
    </message>
    <message>
        <source>Expected a list of at least {n} entry</source>
        <translation>Erwartet wird eine Liste von mindestens {n} Eintrag</translation>
    </message>
    <message>
        <source>Expected a list of at most {n} entries</source>
        <translation>Erwartet wird eine Liste von höchstens {n} Einträgen</translation>
    </message>
    <message>
        <source>Expected a list of {n} entries</source>
        <translation>Erwartet wird eine Liste von {n} Einträgen</translation>
    </message>
    <message>
        <source>Expected a name: a letter or a digit, then only letters, digits, spaces and _ . - / signs</source>
        <translation>Erwartet wird ein Name: ein Buchstabe oder eine Ziffer, danach nur Buchstaben, Ziffern, Leerzeichen und die Zeichen _ . - /</translation>
    </message>
    <message>
        <source>Expected a name: a letter or a digit, then only letters, digits, spaces and _ . - signs</source>
        <translation>Erwartet wird ein Name: ein Buchstabe oder eine Ziffer, dann nur Buchstaben, Ziffern, Leerzeichen und die Zeichen _ . -</translation>
    </message>
    <message>
        <source>Expected a number</source>
        <translation>Erwartet wird eine Zahl</translation>
    </message>
    <message>
        <source>Expected a number above {number}</source>
        <translation>Erwartet wird eine Zahl über {number}</translation>
    </message>
    <message>
        <source>Expected a number below {number}</source>
        <translation>Erwartet wird eine Zahl unter {number}</translation>
    </message>
    <message>
        <source>Expected a number of at least {number}</source>
        <translation>Erwartet wird eine Zahl von mindestens {number}</translation>
    </message>
    <message>
        <source>Expected a number of at most {number}</source>
        <translation>Erwartet wird eine Zahl von höchstens {number}</translation>
    </message>
    <message>
        <source>Expected a number that is not as long as that</source>
        <translation>Erwartet wird eine Zahl, die nicht so lang ist</translation>
    </message>
    <message>
        <source>Expected a picture (JPEG) in base64</source>
        <translation>Erwartet wird ein Bild (JPEG) in Base64</translation>
    </message>
    <message>
        <source>Expected a picture of at most {size} MB</source>
        <translation>Erwartet wird ein Bild von höchstens {size} MB</translation>
    </message>
    <message>
        <source>Expected a record in braces</source>
        <translation>Erwartet wird ein Eintrag in geschweiften Klammern</translation>
    </message>
    <message>
        <source>Expected a whole number</source>
        <translation>Erwartet wird eine ganze Zahl</translation>
    </message>
    <message>
        <source>Expected a word</source>
        <translation>Erwartet wird ein Wort</translation>
    </message>
    <message>
        <source>Expected an amount such as 12.50</source>
        <translation>Erwartet wird ein Betrag wie 12.50</translation>
    </message>
    <message>
        <source>Expected at most {n} letters</source>
        <translation>Erwartet werden höchstens {n} Zeichen</translation>
    </message>
    <message>
        <source>Expected true or false</source>
        <translation>Erwartet wird true oder false</translation>
    </message>
    <message>
        <source>Expected words</source>
        <translation>Erwartet werden Wörter</translation>
    </message>
    <message>
        <source>Export the rack</source>
        <translation>Den Bestand ausgeben</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Ausgeben…</translation>
    </message>
    <message>
        <source>Eye protection, no gloves or loose sleeves, work clamped, bit at rest before you measure. All cautions: on the cover.</source>
        <translation>Augenschutz, keine Handschuhe oder losen Ärmel, Werkstück gespannt, Werkzeug steht vor dem Messen. Alle Hinweise: Deckblatt.</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>Face in the middle, square edges folded flat beside it, as far as they are still there. Crosses are still to be drilled.</source>
        <translation>Vorderseite in der Mitte, gerade Kanten flach daneben geklappt, soweit noch vorhanden. Kreuze sind noch zu bohren.</translation>
    </message>
    <message>
        <source>Face tuner, {tuner}</source>
        <translation>Mechanik vorn, {tuner}</translation>
    </message>
    <message>
        <source>Face up</source>
        <translation>Vorderseite oben</translation>
    </message>
    <message>
        <source>Face up: along {slot} drill {many}, {diameter} wide, {how}{apart}.{chop}</source>
        <translation>Vorderseite oben: entlang {slot} {many} bohren, {diameter} weit, {how}{apart}.{chop}</translation>
    </message>
    <message>
        <source>Face up: from {begins} above the {line} file a slope {half} wide down to {slot}, from nothing to {depth} deep over {length} ({angle:.1f} degrees).</source>
        <translation>Vorderseite oben: ab {begins} über der {line} eine {half} breite Schräge bis {slot} feilen, von null auf {depth} Tiefe über {length} ({angle:.1f} Grad).</translation>
    </message>
    <message>
        <source>Face veneer, counted in</source>
        <translation>Deckfurnier, mitgezählt</translation>
    </message>
    <message>
        <source>Fastest setting</source>
        <translation>Schnellste Stufe</translation>
    </message>
    <message>
        <source>Feather edge</source>
        <translation>Auslaufende Kante</translation>
    </message>
    <message>
        <source>Feather edge is cut</source>
        <translation>Auslaufende Kante wird angeschnitten</translation>
    </message>
    <message>
        <source>Features are aligned along x or y, not {axis}.</source>
        <translation>Teile werden entlang x oder y ausgerichtet, nicht {axis}.</translation>
    </message>
    <message>
        <source>Fewer than two locating pins</source>
        <translation>Weniger als zwei Passstifte</translation>
    </message>
    <message>
        <source>Field `{name}` is missing</source>
        <translation>Das Feld `{name}` fehlt</translation>
    </message>
    <message>
        <source>File a ramp</source>
        <translation>Eine Rampe feilen</translation>
    </message>
    <message>
        <source>Files of an earlier plan</source>
        <translation>Dateien eines früheren Plans</translation>
    </message>
    <message>
        <source>Final diameter {of}</source>
        <translation>Fertigmaß {of}</translation>
    </message>
    <message>
        <source>Find any action, its keys, or a word of the trade.</source>
        <translation>Einen Befehl, seine Tasten oder einen Fachbegriff finden.</translation>
    </message>
    <message>
        <source>Fingers need room between the buttons as they turn.</source>
        <translation>Finger brauchen beim Drehen Platz zwischen den Flügeln.</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Lackieren</translation>
    </message>
    <message>
        <source>Finish builds up in the bore: brought to size before it, the tuner or its bushing no longer goes in and chips the finish at the rim.</source>
        <translation>Lack baut in der Bohrung auf: vorher auf Maß gebracht, geht die Mechanik oder ihre Buchse nicht mehr hinein und splittert den Lack am Rand ab.</translation>
    </message>
    <message>
        <source>Finish builds up in the hole: the peg would no longer go in as far.</source>
        <translation>Lack setzt sich im Loch ab: der Wirbel ginge nicht mehr so weit hinein.</translation>
    </message>
    <message>
        <source>Finish goes on sanded wood.</source>
        <translation>Lack kommt auf geschliffenes Holz.</translation>
    </message>
    <message>
        <source>Finish the outline by hand</source>
        <translation>Den Umriss von Hand fertig machen</translation>
    </message>
    <message>
        <source>Finish, once it has its shape</source>
        <translation>Lackieren oder ölen, wenn die Form steht</translation>
    </message>
    <message>
        <source>Finished sizes in {unit_words}, length along the grain. Allow for the saw and the plane as you are used to.</source>
        <translation>Fertigmaße in {unit_words}, Länge in Faserrichtung. Säge- und Hobelzugabe wie gewohnt.</translation>
    </message>
    <message>
        <source>First handle, across</source>
        <translation>Erster Griff, quer</translation>
    </message>
    <message>
        <source>First handle, along</source>
        <translation>Erster Griff, längs</translation>
    </message>
    <message>
        <source>First to last string</source>
        <translation>Erste bis letzte Saite</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Passung</translation>
    </message>
    <message>
        <source>Flat for {tuner}</source>
        <translation>Fläche für {tuner}</translation>
    </message>
    <message>
        <source>Flat of {id}</source>
        <translation>Fläche von {id}</translation>
    </message>
    <message>
        <source>Flat too small for its plate</source>
        <translation>Fläche zu klein für ihre Platte</translation>
    </message>
    <message>
        <source>Flat under the plate</source>
        <translation>Fläche unter der Platte</translation>
    </message>
    <message>
        <source>Flip</source>
        <translation>Wenden</translation>
    </message>
    <message>
        <source>Floor of a slot is thin</source>
        <translation>Boden eines Schlitzes ist dünn</translation>
    </message>
    <message>
        <source>Follower</source>
        <translation>Führung</translation>
    </message>
    <message>
        <source>Follower has to rub</source>
        <translation>Führung muss anliegen</translation>
    </message>
    <message>
        <source>Follower in the template</source>
        <translation>Führung in der Schablone</translation>
    </message>
    <message>
        <source>Following the template</source>
        <translation>Folgen der Schablone</translation>
    </message>
    <message>
        <source>For a peg that its taper holds: how wide the bore is opened by hand at the side that it is drilled from, after all else. Wood is kept all along as if it were as wide as there.</source>
        <translation>Für einen Wirbel, den seine Verjüngung hält: wie weit die Bohrung an der Seite, von der sie gebohrt wird, nach allem anderen von Hand geöffnet wird. Holz bleibt überall so stehen, als wäre sie durchgehend so weit.</translation>
    </message>
    <message>
        <source>For fanned frets: how far the nut line is turned about its middle. Above zero the bass end lies nearer the tip.</source>
        <translation>Für gefächerte Bünde: um wie viel die Sattellinie um ihre Mitte gedreht ist. Über null liegt das Bassende näher an der Spitze.</translation>
    </message>
    <message>
        <source>For fanned frets: how far the nut line is turned about its middle. Above zero the bass end lies nearer the tip. Widths stay square to the centreline, and so does the base line through its middle, from which distances are told. The outline ends where it did until you let it end along the nut line, under Strings.</source>
        <translation>Für gefächerte Bünde: um wie viel die Sattellinie um ihre Mitte gedreht ist. Über null liegt das Bassende näher an der Spitze. Breiten bleiben quer zur Mittellinie, ebenso die Grundlinie durch ihre Mitte, ab der Abstände gelten. Der Umriss endet, wo er endete, bis Sie ihn unter Saiten an der Sattellinie enden lassen.</translation>
    </message>
    <message>
        <source>For the drill press one for each tuner, for the router one for each slot and one for the outline. Cut them apart.</source>
        <translation>Für die Bohrmaschine eine je Mechanik, für die Oberfräse eine je Schlitz und eine für den Umriss. Auseinanderschneiden.</translation>
    </message>
    <message>
        <source>For the steps that are left.</source>
        <translation>Für die Schritte, die noch zu tun sind.</translation>
    </message>
    <message>
        <source>For {n} of them no move was sought that cures it: mend the others first, then check again.</source>
        <translation>Für {n} davon wurde kein Schritt gesucht, der ihn behebt: erst die anderen beheben, dann noch einmal prüfen.</translation>
    </message>
    <message>
        <source>For {n} of them no moves were sought that cure them: mend the others first, then check again.</source>
        <translation>Für {n} davon wurden keine Schritte gesucht, die sie beheben: erst die anderen beheben, dann noch einmal prüfen.</translation>
    </message>
    <message>
        <source>Forget the correction</source>
        <translation>Die Korrektur vergessen</translation>
    </message>
    <message>
        <source>Forget the time that runs.</source>
        <translation>Die laufende Zeit vergessen.</translation>
    </message>
    <message>
        <source>Forstner bit</source>
        <translation>Forstnerbohrer</translation>
    </message>
    <message>
        <source>Forward to: {name}</source>
        <translation>Vor zu: {name}</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Four strings, bass, in line</source>
        <translation>Vier Saiten, Bass, in Reihe</translation>
    </message>
    <message>
        <source>Four strings, small and slotted</source>
        <translation>Vier Saiten, klein und geschlitzt</translation>
    </message>
    <message>
        <source>Free from the row</source>
        <translation>Aus der Reihe lösen</translation>
    </message>
    <message>
        <source>Free it from the row</source>
        <translation>Aus der Reihe lösen</translation>
    </message>
    <message>
        <source>Friction peg straight through a plain bore, held by washers and a screw in its own button; nothing else is drilled. The button lies behind the post.</source>
        <translation>Reibwirbel gerade durch eine glatte Bohrung, von Scheiben und einer Schraube im eigenen Flügel gehalten; sonst wird nichts gebohrt. Der Flügel liegt hinter der Welle.</translation>
    </message>
    <message>
        <source>From A to B</source>
        <translation>Von A bis B</translation>
    </message>
    <message>
        <source>From a drawing…</source>
        <translation>Aus einer Zeichnung…</translation>
    </message>
    <message>
        <source>From a few numbers…</source>
        <translation>Aus wenigen Zahlen…</translation>
    </message>
    <message>
        <source>From a photo or scan…</source>
        <translation>Aus Foto oder Scan…</translation>
    </message>
    <message>
        <source>From an imported drawing.</source>
        <translation>Aus einer eingelesenen Zeichnung.</translation>
    </message>
    <message>
        <source>From an invented sample</source>
        <translation>Aus einem erfundenen Beispiel</translation>
    </message>
    <message>
        <source>From end to end over the round ends; the nut end stays where it is.</source>
        <translation>Von Ende zu Ende über die runden Enden; das Sattelende bleibt, wo es ist.</translation>
    </message>
    <message>
        <source>From face to back as it is drilled: planed, veneers and all. Side bores lie at half of it unless they say otherwise.</source>
        <translation>Von der Vorderseite zur Rückseite, wie gebohrt wird: gehobelt, mitsamt Furnieren. Seitenbohrungen liegen auf halber Dicke, wenn sie nichts anderes sagen.</translation>
    </message>
    <message>
        <source>From field to field as the window is read; F6 from part to part</source>
        <translation>Von Feld zu Feld, wie man liest; F6 von Fensterteil zu Fensterteil</translation>
    </message>
    <message>
        <source>From node to node of the outline or the drawn slot that is held</source>
        <translation>Von Knoten zu Knoten des gehaltenen Umrisses oder gezeichneten Schlitzes</translation>
    </message>
    <message>
        <source>From numbers</source>
        <translation>Aus Zahlen</translation>
    </message>
    <message>
        <source>From nut to bridge. The pull of the strings is reckoned with it.</source>
        <translation>Vom Sattel zum Steg. Damit wird der Zug der Saiten berechnet.</translation>
    </message>
    <message>
        <source>From one post of the row to the next: all move together.</source>
        <translation>Von einer Welle der Reihe zur nächsten: alle wandern gemeinsam.</translation>
    </message>
    <message>
        <source>From square to the edge: a bore from the side that leans more asks for a guide block or a short starter. Common practice, no source: set what you trust.</source>
        <translation>Gemessen vom rechten Winkel zur Kante: Eine Seitenbohrung, die stärker geneigt ist, braucht einen Führungsblock oder einen kurzen, steifen Anbohrer. Übliche Praxis, ohne Quelle: stellen Sie ein, worauf Sie vertrauen.</translation>
    </message>
    <message>
        <source>From the centreline to the middle of the round end, positive to the treble side.</source>
        <translation>Von der Mittellinie zur Mitte des runden Endes, positiv zur Diskantseite.</translation>
    </message>
    <message>
        <source>From the centreline, positive to the treble side.</source>
        <translation>Von der Mittellinie, positiv zur Diskantseite.</translation>
    </message>
    <message>
        <source>From the column to the drill's axis.</source>
        <translation>Von der Säule bis zur Bohrerachse.</translation>
    </message>
    <message>
        <source>From the drawing into the first field of the panel; Esc comes back</source>
        <translation>Von der Zeichnung ins erste Feld der Tafel; Esc kommt zurück</translation>
    </message>
    <message>
        <source>From the face down to the axis of the bore; left empty it is half the thickness.</source>
        <translation>Von der Vorderseite hinab zur Bohrungsachse; leer ist es die halbe Dicke.</translation>
    </message>
    <message>
        <source>From the face down; left empty the slot goes through.</source>
        <translation>Von der Vorderseite hinab; leer geht der Schlitz durch.</translation>
    </message>
    <message>
        <source>From the outline square in to the posts of the row.</source>
        <translation>Vom Umriss rechtwinklig hinein zu den Wellen der Reihe.</translation>
    </message>
    <message>
        <source>From the plate of the first to that of the last: their bores are then parallel, and one plate lies flat under all. Where each has its mirror image on the other edge, that is made straight too.</source>
        <translation>Von der Platte der ersten bis zu der der letzten: Ihre Bohrungen sind dann parallel, und eine Platte liegt unter allen flach auf. Wo jede auf der anderen Kante ihr Spiegelbild hat, wird auch diese gerade.</translation>
    </message>
    <message>
        <source>From the post's axis along the edge, towards the tip of the head.</source>
        <translation>Von der Wellenachse entlang der Kante, zur Spitze der Kopfplatte hin.</translation>
    </message>
    <message>
        <source>From the post's axis to the far end of the button. Less than its length: the button lies behind the post and turns about its axis, as of a peg.</source>
        <translation>Von der Achse der Welle bis ans ferne Ende des Flügels. Weniger als seine Länge: Der Flügel liegt hinter der Welle und dreht sich um deren Achse, wie bei einem Wirbel.</translation>
    </message>
    <message>
        <source>From the post's axis towards the back of the head.</source>
        <translation>Von der Wellenachse zur Rückseite hin.</translation>
    </message>
    <message>
        <source>From the post's axis towards the button, seen on the face.</source>
        <translation>Von der Wellenachse zum Flügel hin, von vorn gesehen.</translation>
    </message>
    <message>
        <source>From the router's base to the tip, bearing included, as far as it may be set.</source>
        <translation>Von der Fußplatte bis zur Spitze, Anlaufring eingeschlossen, so weit es eingestellt werden darf.</translation>
    </message>
    <message>
        <source>From the square edge in to the glue line.</source>
        <translation>Von der geraden Kante hinein bis zur Leimfuge.</translation>
    </message>
    <message>
        <source>From the surface that it starts from, to full diameter; through when left empty.</source>
        <translation>Von der Fläche, an der sie beginnt, bis zum vollen Durchmesser; leer geht sie durch.</translation>
    </message>
    <message>
        <source>From the surface that it starts from; left empty it goes through.</source>
        <translation>Von der Fläche, an der sie beginnt; leer geht sie durch.</translation>
    </message>
    <message>
        <source>From the {line} to the middle of the round end, positive to the tip: the slot goes on beyond it by half of its width.</source>
        <translation>Von der {line} zur Mitte des runden Endes, positiv zur Spitze: Der Schlitz geht um die halbe Breite darüber hinaus.</translation>
    </message>
    <message>
        <source>From the {line}, positive to the tip.</source>
        <translation>Von der {line}, positiv zur Spitze.</translation>
    </message>
    <message>
        <source>From tuner to tuner</source>
        <translation>Von Mechanik zu Mechanik</translation>
    </message>
    <message>
        <source>From wall to wall. The bit has to pass, and the string hole has to lie between the walls.</source>
        <translation>Von Wand zu Wand. Der Fräser muss hindurchpassen, und das Saitenloch muss zwischen den Wänden liegen.</translation>
    </message>
    <message>
        <source>From wall to wall; left empty the ramp is as wide as its slot.</source>
        <translation>Von Wand zu Wand; leer ist die Rampe so breit wie ihr Schlitz.</translation>
    </message>
    <message>
        <source>Full size</source>
        <translation>1 : 1</translation>
    </message>
    <message>
        <source>Full-size sheets: print at 100 %</source>
        <translation>Blätter in voller Größe: mit 100 % drucken</translation>
    </message>
    <message>
        <source>Generic set by gauge…</source>
        <translation>Allgemeiner Satz nach Stärke…</translation>
    </message>
    <message>
        <source>Generic set of strings</source>
        <translation>Allgemeiner Saitensatz</translation>
    </message>
    <message>
        <source>Ghost lines show it: widest side angle from {worst} to {worst_then} degrees, typical from {mean} to {mean_then}, crossings from {crossed} to {crossed_then}, strings that rub somewhere from {rubbing} to {rubbing_then}.</source>
        <translation>Geisterlinien zeigen es: größter Seitenwinkel von {worst} auf {worst_then} Grad, üblicher von {mean} auf {mean_then}, Kreuzungen von {crossed} auf {crossed_then}, Saiten, die irgendwo reiben, von {rubbing} auf {rubbing_then}.</translation>
    </message>
    <message>
        <source>Ghost lines show it: widest side angle {worst} degrees, typical {mean}, crossings {crossed}, strings that rub somewhere {rubbing}.</source>
        <translation>Geisterlinien zeigen es: größter Seitenwinkel {worst} Grad, üblicher {mean}, Kreuzungen {crossed}, Saiten, die irgendwo reiben: {rubbing}.</translation>
    </message>
    <message>
        <source>Give string {string} a post more in line with its place at the nut.</source>
        <translation>Saite {string} eine Welle geben, die mehr in der Flucht ihres Platzes am Sattel liegt.</translation>
    </message>
    <message>
        <source>Give {opening} a ramp {ramp_words}.</source>
        <translation>{opening} eine Rampe geben: {ramp_words}.</translation>
    </message>
    <message>
        <source>Give {slot} a ramp {ramp_words}</source>
        <translation>{slot} eine Rampe geben: {ramp_words}</translation>
    </message>
    <message>
        <source>Give {tuner} a string nearer its side, or move it farther from the nut.</source>
        <translation>{tuner} eine Saite geben, die näher an ihrer Seite liegt, oder weiter vom Sattel wegsetzen.</translation>
    </message>
    <message>
        <source>Glue a veneer</source>
        <translation>Ein Furnier aufleimen</translation>
    </message>
    <message>
        <source>Glue an ear</source>
        <translation>Ein Ohr anleimen</translation>
    </message>
    <message>
        <source>Glue dries</source>
        <translation>Leim trocknet</translation>
    </message>
    <message>
        <source>Glue dries once beside that, for about {hours:.0f} hours.</source>
        <translation>Daneben trocknet einmal Leim, etwa {hours:.0f} Stunden lang.</translation>
    </message>
    <message>
        <source>Glue dries {n} times beside that, for about {hours:.0f} hours in all.</source>
        <translation>Daneben trocknet {n}-mal Leim, zusammen etwa {hours:.0f} Stunden lang.</translation>
    </message>
    <message>
        <source>Glue dries, in the clamps</source>
        <translation>Leim trocknet, in den Zwingen</translation>
    </message>
    <message>
        <source>Glue it on the back, {line} and centreline on their marks: prick what is drilled from behind (full circles).</source>
        <translation>Auf die Rückseite kleben, {line} und Mittellinie auf ihre Anrisse: ankörnen, was von hinten gebohrt wird (volle Kreise).</translation>
    </message>
    <message>
        <source>Glue it on the template sheet, prick every cross, cut. {words}</source>
        <translation>Auf die Schablonenplatte kleben, jedes Kreuz ankörnen, ausschneiden. {words}</translation>
    </message>
    <message>
        <source>Glue line</source>
        <translation>Leimfuge</translation>
    </message>
    <message>
        <source>Glue line through a hole</source>
        <translation>Leimfuge in einer Bohrung</translation>
    </message>
    <message>
        <source>Glue on {ear} before these are drilled, and let the glue cure.</source>
        <translation>{ear} anleimen, bevor diese gebohrt werden, und den Leim aushärten lassen.</translation>
    </message>
    <message>
        <source>Glue the back veneer</source>
        <translation>Rückenfurnier aufleimen</translation>
    </message>
    <message>
        <source>Glue the face veneer</source>
        <translation>Deckfurnier aufleimen</translation>
    </message>
    <message>
        <source>Glue the scarf joint</source>
        <translation>Schäftung leimen</translation>
    </message>
    <message>
        <source>Glue with the {line} and the centreline on lines squared on the wood. Prick where the hairlines cross. Dashed circles are drilled from the other side.</source>
        <translation>Mit {line} und Mittellinie auf gewinkelte Linien des Holzes kleben. Ankörnen, wo sich die Haarlinien kreuzen. Gestrichelte Kreise werden von der anderen Seite gebohrt.</translation>
    </message>
    <message>
        <source>Glue {ear}</source>
        <translation>{ear} anleimen</translation>
    </message>
    <message>
        <source>Glue {ear} to the {side} side, let it dry, then plane face, back and edge flush and square.</source>
        <translation>{ear} anleimen ({side}), trocknen lassen, dann Vorderseite, Rückseite und Kante bündig und winklig hobeln.</translation>
    </message>
    <message>
        <source>Glued on: {ears}.</source>
        <translation>Angeleimt: {ears}.</translation>
    </message>
    <message>
        <source>Glued otherwise</source>
        <translation>Anders angeleimt</translation>
    </message>
    <message>
        <source>Go on with one that you saved.</source>
        <translation>An einem gespeicherten weiterarbeiten.</translation>
    </message>
    <message>
        <source>Go on working</source>
        <translation>Weiterarbeiten</translation>
    </message>
    <message>
        <source>Go to another machine</source>
        <translation>Zu einer anderen Maschine gehen</translation>
    </message>
    <message>
        <source>Go to the next snag and choose its card; S does it on the drawing.</source>
        <translation>Zum nächsten Haken gehen und seine Karte wählen; in der Zeichnung tut es S.</translation>
    </message>
    <message>
        <source>Go to the snag before; Shift+S does it on the drawing.</source>
        <translation>Zum Haken davor gehen; in der Zeichnung tut es Umschalt+S.</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>Guide bush</source>
        <translation>Kopierhülse</translation>
    </message>
    <message>
        <source>Guide bushes</source>
        <translation>Kopierhülsen</translation>
    </message>
    <message>
        <source>Guitar, nylon strings, slotted head</source>
        <translation>Gitarre, Nylonsaiten, Kopfplatte mit Schlitzen</translation>
    </message>
    <message>
        <source>Guitar, steel strings</source>
        <translation>Gitarre, Stahlsaiten</translation>
    </message>
    <message>
        <source>H = L x sin(tilt): L is measured along the board from its lower edge to where it rests on the block, H is the block. Set it, drill a scrap, check the angle, then drill the blank. The board of the rack is L {base}.</source>
        <translation>H = L x sin(Neigung): L wird entlang des Bretts von seiner Unterkante bis zur Auflage auf dem Klotz gemessen, H ist der Klotz. Einstellen, ein Abfallstück bohren, den Winkel prüfen, dann den Rohling bohren. Das Brett im Bestand hat L {base}.</translation>
    </message>
    <message>
        <source>Half of follower less cutter: how far the cut lies from the template's edge. An opening in the template is that much larger than the slot, an outside template that much smaller than the outline.</source>
        <translation>Die Hälfte von Führung minus Fräser: wie weit der Schnitt vom Schablonenrand liegt. Eine Öffnung ist um so viel größer als der Schlitz, eine Außenschablone um so viel kleiner als der Umriss.</translation>
    </message>
    <message>
        <source>Hang what was copied at the pointer; a press sets it down.</source>
        <translation>Das Kopierte an den Zeiger hängen; ein Klick setzt es ab.</translation>
    </message>
    <message>
        <source>Hard wood, such as maple</source>
        <translation>Hartes Holz, etwa Ahorn</translation>
    </message>
    <message>
        <source>Hardboard that the follower runs along; it is larger or smaller than the cut by the offset.</source>
        <translation>Hartfaserplatte, an der die Führung entlangläuft; um den Versatz größer oder kleiner als der Schnitt.</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Mechanik</translation>
    </message>
    <message>
        <source>Hardware by its dimensions, in {unit_words}: hold each part against them before you drill.</source>
        <translation>Teile nach ihren Maßen in {unit_words}: jedes Teil damit vergleichen, bevor Sie bohren.</translation>
    </message>
    <message>
        <source>Hardware of all</source>
        <translation>Mechanik aller</translation>
    </message>
    <message>
        <source>Hardware through the face</source>
        <translation>Mechaniken durch die Vorderseite</translation>
    </message>
    <message>
        <source>Hardware through the side</source>
        <translation>Mechaniken durch die Seite</translation>
    </message>
    <message>
        <source>Have two pins proposed: they are set mirrored about the centreline; or choose bits that get through from the face.</source>
        <translation>Zwei Stifte vorschlagen lassen: sie werden spiegelbildlich zur Mittellinie gesetzt; oder Fräser wählen, die von der Vorderseite durchkommen.</translation>
    </message>
    <message>
        <source>Head and neck sawn apart at the pitch of the head and glued together again at an angle, so that the grain runs along both. Its glue line comes out on the face and, nearer to the nut, on the back.</source>
        <translation>Kopfplatte und Hals, im Kopfwinkel auseinandergesägt und im Winkel wieder verleimt, so dass die Faser längs durch beide läuft. Die Leimfuge tritt auf der Vorderseite aus und, näher am Sattel, auf der Rückseite.</translation>
    </message>
    <message>
        <source>Head too thick or too thin for its hardware</source>
        <translation>Kopfplatte zu dick oder zu dünn für ihre Mechanik</translation>
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
        <translation>Kopfplatten-Entwürfe (*.headstock.json)</translation>
    </message>
    <message>
        <source>Headstock, opened-out view</source>
        <translation>Kopfplatte, Abwicklung</translation>
    </message>
    <message>
        <source>Height above the face</source>
        <translation>Höhe über der Vorderseite</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Gehalten</translation>
    </message>
    <message>
        <source>Hide the picture</source>
        <translation>Das Bild verbergen</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Hold &amp;all tuners</source>
        <translation>&amp;Alle Mechaniken halten</translation>
    </message>
    <message>
        <source>Hold a corner first.</source>
        <translation>Zuerst eine Ecke halten.</translation>
    </message>
    <message>
        <source>Hold a node first (K): the new one comes into the edge after it.</source>
        <translation>Zuerst einen Knoten halten (K): der neue kommt in die Kante danach.</translation>
    </message>
    <message>
        <source>Hold at least {n} things first: press with Shift, or pull a frame round them.</source>
        <translation>Zuerst mindestens {n} Teile halten: mit Umschalt klicken oder einen Rahmen darum ziehen.</translation>
    </message>
    <message>
        <source>Hold every tuner.</source>
        <translation>Jede Mechanik halten.</translation>
    </message>
    <message>
        <source>Hold one more thing or node; a frame pulled on bare wood holds all that is in it</source>
        <translation>Ein Teil oder einen Knoten mehr halten; ein Rahmen, auf blankem Holz gezogen, hält alles darin</translation>
    </message>
    <message>
        <source>Hold the next thing of the drawing; N does it on the drawing.</source>
        <translation>Das nächste Teil der Zeichnung halten; in der Zeichnung tut es N.</translation>
    </message>
    <message>
        <source>Hold the outline or a drawn slot first: then K leads from node to node.</source>
        <translation>Zuerst den Umriss oder einen gezeichneten Schlitz halten: dann führt K von Knoten zu Knoten.</translation>
    </message>
    <message>
        <source>Hold the outline or a slot first.</source>
        <translation>Zuerst den Umriss oder einen Schlitz halten.</translation>
    </message>
    <message>
        <source>Hold the thing before; Shift+N does it on the drawing.</source>
        <translation>Das Teil davor halten; in der Zeichnung tut es Umschalt+N.</translation>
    </message>
    <message>
        <source>Hold tuners, slots, pins or holes first: these can be copied.</source>
        <translation>Zuerst Mechaniken, Schlitze, Stifte oder Bohrungen halten: diese lassen sich kopieren.</translation>
    </message>
    <message>
        <source>Hold two slots or more that overlap.</source>
        <translation>Zwei oder mehr Schlitze halten, die sich überschneiden.</translation>
    </message>
    <message>
        <source>Hole</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Hole close to a flat</source>
        <translation>Bohrung nahe an einer Fläche</translation>
    </message>
    <message>
        <source>Hole in the way of a side bore</source>
        <translation>Bohrung im Weg einer Seitenbohrung</translation>
    </message>
    <message>
        <source>Hole meets a ramp</source>
        <translation>Bohrung trifft eine Rampe</translation>
    </message>
    <message>
        <source>Hole table</source>
        <translation>Bohrtabelle</translation>
    </message>
    <message>
        <source>Hole {of}</source>
        <translation>Bohrung {of}</translation>
    </message>
    <message>
        <source>Hole, {id}</source>
        <translation>Bohrung, {id}</translation>
    </message>
    <message>
        <source>Holes</source>
        <translation>Bohrungen</translation>
    </message>
    <message>
        <source>Holes come out {by} too deep on average: set the stop anew.</source>
        <translation>Bohrungen werden im Mittel {by} zu tief: den Tiefenanschlag neu einstellen.</translation>
    </message>
    <message>
        <source>Holes come out {by} too shallow on average: set the stop anew.</source>
        <translation>Bohrungen werden im Mittel {by} zu flach: den Tiefenanschlag neu einstellen.</translation>
    </message>
    <message>
        <source>Holes that tuners and pins of the layout have already are not set once more.</source>
        <translation>Bohrungen, die Mechaniken und Passstifte des Entwurfs schon haben, werden nicht noch einmal gesetzt.</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Hours, money and notes, and what the next job will take.</source>
        <translation>Stunden, Geld und Notizen, und was die nächste Arbeit brauchen wird.</translation>
    </message>
    <message>
        <source>Hours, money, what to do differently: recorded, or to fill in.</source>
        <translation>Stunden, Geld, was anders zu machen ist: aufgezeichnet oder zum Ausfüllen.</translation>
    </message>
    <message>
        <source>How deep a bit can cut below the router's base, less the template.</source>
        <translation>Wie tief ein Fräser unter der Fußplatte schneidet, abzüglich der Schablone.</translation>
    </message>
    <message>
        <source>How deep the drill press is set, from where the drill enters: to its full diameter, or to its point.</source>
        <translation>Wie tief die Bohrmaschine eingestellt wird, ab dem Eintritt des Bohrers: bis zum vollen Durchmesser oder bis zur Spitze.</translation>
    </message>
    <message>
        <source>How deep the ramp lies where it meets the slot.</source>
        <translation>Wie tief die Rampe liegt, wo sie den Schlitz trifft.</translation>
    </message>
    <message>
        <source>How far a mark on the wood strays from where the paper says, either way.</source>
        <translation>Wie weit ein Anriss auf dem Holz von der Angabe des Papiers abweicht, nach beiden Seiten.</translation>
    </message>
    <message>
        <source>How far a string turns aside at the nut on its way to the post, seen from the face. Small angles keep a string in tune.</source>
        <translation>Wie weit eine Saite am Sattel auf dem Weg zur Welle seitlich abknickt, von vorn gesehen. Kleine Winkel halten die Stimmung.</translation>
    </message>
    <message>
        <source>How far before the slot the ramp begins.</source>
        <translation>Wie weit vor dem Schlitz die Rampe beginnt.</translation>
    </message>
    <message>
        <source>How far behind the tip the neck is cut off: there the nut line comes to lie.</source>
        <translation>Wie weit hinter der Spitze der Hals abgeschnitten wird: Dort kommt die Sattellinie zu liegen.</translation>
    </message>
    <message>
        <source>How far from the nut line, on the centreline, the joint of head and neck comes out on the face, under a veneer or not: parallel to the nut, and as steep into the wood as the head leans. 0 for one that lies behind the nut line.</source>
        <translation>Wie weit von der Sattellinie, auf der Mittellinie, die Fuge von Kopfplatte und Hals auf der Vorderseite austritt, ob unter einem Furnier oder nicht: parallel zum Sattel, und so steil ins Holz, wie die Kopfplatte geneigt ist. 0 für eine, die hinter der Sattellinie liegt.</translation>
    </message>
    <message>
        <source>How far it reaches; deeper than that it cannot work.</source>
        <translation>Wie weit er reicht; tiefer kann er nicht arbeiten.</translation>
    </message>
    <message>
        <source>How far the bit can be lowered; deeper needs another depth of the collet.</source>
        <translation>Wie weit sich der Fräser senken lässt; tiefer muss er anders eingespannt werden.</translation>
    </message>
    <message>
        <source>How far the button's axis lies from the back, or from the edge.</source>
        <translation>Wie weit die Flügelachse von der Rückseite oder der Kante liegt.</translation>
    </message>
    <message>
        <source>How far the cutter leaves the template's line, and the template its pins.</source>
        <translation>Wie weit der Fräser von der Schablonenlinie und die Schablone von ihren Stiften abweicht.</translation>
    </message>
    <message>
        <source>How far the depth strays from what the stop was set to.</source>
        <translation>Wie weit die Tiefe von der am Tiefenanschlag eingestellten abweicht.</translation>
    </message>
    <message>
        <source>How far the drill has run off its axis 50 mm deep; half as far 25 mm deep.</source>
        <translation>Wie weit der Bohrer in 50 mm Tiefe von seiner Achse abgekommen ist; in 25 mm halb so weit.</translation>
    </message>
    <message>
        <source>How far the head leans back from the line of the neck.</source>
        <translation>Wie weit sich die Kopfplatte gegen den Hals nach hinten neigt.</translation>
    </message>
    <message>
        <source>How far the line may stray</source>
        <translation>Wie weit die Linie abweichen darf</translation>
    </message>
    <message>
        <source>How far the plate reaches from the post's axis away from the button.</source>
        <translation>Wie weit die Platte von der Wellenachse vom Flügel weg reicht.</translation>
    </message>
    <message>
        <source>How far the plate reaches from the post's axis towards the button.</source>
        <translation>Wie weit die Platte von der Wellenachse zum Flügel hin reicht.</translation>
    </message>
    <message>
        <source>How far the proposal is</source>
        <translation>Wie weit der Vorschlag ist</translation>
    </message>
    <message>
        <source>How far the router's base has to rest on the board at the rim of an opening.</source>
        <translation>Wie weit die Fußplatte am Rand einer Öffnung auf dem Brett aufliegen muss.</translation>
    </message>
    <message>
        <source>How far the spindle comes down in one go.</source>
        <translation>Wie weit die Spindel in einem Zug herunterkommt.</translation>
    </message>
    <message>
        <source>How far the square bass edge lies from the centreline: bores through the side are marked and measured from it.</source>
        <translation>Wie weit die gerade Basskante von der Mittellinie liegt: von ihr aus werden Seitenbohrungen angerissen und gemessen.</translation>
    </message>
    <message>
        <source>How far the square treble edge lies from the centreline: bores through the side are marked and measured from it.</source>
        <translation>Wie weit die gerade Diskantkante von der Mittellinie liegt: von ihr aus werden Seitenbohrungen angerissen und gemessen.</translation>
    </message>
    <message>
        <source>How far the table is from the tilt that you set, and from square for a bore through the face.</source>
        <translation>Wie weit der Tisch von der eingestellten Neigung und, für eine Bohrung durch die Vorderseite, vom rechten Winkel abweicht.</translation>
    </message>
    <message>
        <source>How far your marks, drills, angles and stops stray from what was meant. With it the program reckons how likely a clearance is to hold.</source>
        <translation>Wie weit Ihre Anrisse, Bohrer, Winkel und Anschläge vom Gemeinten abweichen. Daraus rechnet das Programm, wie wahrscheinlich ein Abstand hält.</translation>
    </message>
    <message>
        <source>How far your shop strays stands in the Blank stage.</source>
        <translation>Wie genau Ihre Werkstatt ist, steht im Bereich Rohling.</translation>
    </message>
    <message>
        <source>How high the strings run that it holds down: the lower, the more they bend over the nut.</source>
        <translation>Wie hoch die Saiten laufen, die er niederhält: Je tiefer, desto mehr knicken sie über dem Sattel ab.</translation>
    </message>
    <message>
        <source>How many times as long all of it takes you: above 1 longer, below 1 shorter.</source>
        <translation>Wie viel Mal so lange alles bei Ihnen dauert: über 1 länger, unter 1 kürzer.</translation>
    </message>
    <message>
        <source>How much a string bends down over the nut: the pitch of the head and the drop from the nut to the winding together. Too little and the string rattles in its place, too much and it binds.</source>
        <translation>Wie weit eine Saite über dem Sattel abknickt: Kopfwinkel und Gefälle vom Sattel zur Wicklung zusammen. Zu wenig, und die Saite schnarrt an ihrem Platz; zu viel, und sie klemmt.</translation>
    </message>
    <message>
        <source>How much the printed paper has stretched or shrunk; the 100 mm bars on each page tell.</source>
        <translation>Wie sehr sich das gedruckte Papier gedehnt hat oder geschrumpft ist; die 100-mm-Balken auf jeder Seite zeigen es.</translation>
    </message>
    <message>
        <source>How often a shop that works as true as yours would spoil a head built by this layout, and how often every margin would be kept.</source>
        <translation>Wie oft eine Werkstatt, die so genau arbeitet wie Ihre, eine Kopfplatte nach diesem Entwurf verdürbe, und wie oft jeder Mindestabstand gehalten würde.</translation>
    </message>
    <message>
        <source>How tall the ring is: so much of it can rub.</source>
        <translation>Wie hoch der Ring ist: so viel davon kann anliegen.</translation>
    </message>
    <message>
        <source>How the drawing is taken</source>
        <translation>Wie die Zeichnung übernommen wird</translation>
    </message>
    <message>
        <source>How the outline is traced</source>
        <translation>Wie der Umriss nachgezogen wird</translation>
    </message>
    <message>
        <source>How the router stands on the template: place {number} of {places}</source>
        <translation>Stand der Oberfräse auf der Schablone: Stelle {number} von {places}</translation>
    </message>
    <message>
        <source>How they are mounted, {word}</source>
        <translation>Wie sie sitzen, {word}</translation>
    </message>
    <message>
        <source>How thick the neck is where the head piece is glued under it, square to the neck. Typed here, it sets where the line comes out.</source>
        <translation>Wie dick der Hals ist, wo das Kopfstück unter ihn geleimt wird, rechtwinklig zum Hals. Hier eingegeben, setzt er, wo die Fuge austritt.</translation>
    </message>
    <message>
        <source>If a newer Pegwright wrote it, update Pegwright to open it; the file is left as it is.</source>
        <translation>Wenn ein neueres Pegwright sie geschrieben hat, Pegwright aktualisieren, um sie zu öffnen; die Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Import a drawing</source>
        <translation>Eine Zeichnung einlesen</translation>
    </message>
    <message>
        <source>Import a rack</source>
        <translation>Einen Bestand einlesen</translation>
    </message>
    <message>
        <source>Import {path}</source>
        <translation>{path} einlesen</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Einlesen…</translation>
    </message>
    <message>
        <source>Impossible by now</source>
        <translation>Inzwischen unmöglich</translation>
    </message>
    <message>
        <source>Impossible in this order</source>
        <translation>In dieser Folge unmöglich</translation>
    </message>
    <message>
        <source>In numbers</source>
        <translation>In Zahlen</translation>
    </message>
    <message>
        <source>In one course with string {string}</source>
        <translation>Im selben Chor wie Saite {string}</translation>
    </message>
    <message>
        <source>In the blank already, open or filled: a truss rod's pocket, an inlay's bed, an old slot. Everything keeps clear of it, nothing cuts it; no post stands in it and no string goes down into it. Of one that is cut from the back leave the depth empty: then everything keeps clear of it at every depth.</source>
        <translation>Schon im Rohling, offen oder gefüllt: die Tasche eines Halsstabs, das Bett einer Einlage, ein alter Schlitz. Alles hält Abstand davon, nichts schneidet daran; keine Welle steht darin, und keine Saite geht hinein. Bei einer von der Rückseite bleibt die Tiefe leer: Dann hält alles in jeder Tiefe Abstand.</translation>
    </message>
    <message>
        <source>In the blank already: everything keeps clear of it, nothing drills it. One that is plugged first is wood for all that comes after, as when old tuners give way to others: a step of the order fills it.</source>
        <translation>Schon im Rohling: Alles hält Abstand davon, nichts bohrt es. Eines, das zuerst verschlossen wird, ist für alles Weitere Holz, etwa wenn alte Mechaniken anderen weichen: Ein Schritt der Folge füllt es.</translation>
    </message>
    <message>
        <source>In the real piece</source>
        <translation>Am echten Stück</translation>
    </message>
    <message>
        <source>In the real piece it is routed already (job book): this is for the next one.</source>
        <translation>Im echten Stück ist er schon gefräst (Werkbuch): Das gilt für das nächste.</translation>
    </message>
    <message>
        <source>In the row</source>
        <translation>In der Reihe</translation>
    </message>
    <message>
        <source>In the running order: move the step that is picked</source>
        <translation>In der Arbeitsfolge: den gewählten Schritt versetzen</translation>
    </message>
    <message>
        <source>In the running order: the step before, the step after</source>
        <translation>In der Arbeitsfolge: der Schritt davor, der Schritt danach</translation>
    </message>
    <message>
        <source>In the running order: tick the step that is picked off as done, or open it again</source>
        <translation>In der Arbeitsfolge: den gewählten Schritt als erledigt abhaken oder wieder öffnen</translation>
    </message>
    <message>
        <source>In the template nothing is left between {id} and {beside} at {place}: choose a follower nearer to the size of the cutter.</source>
        <translation>In der Schablone bleibt nichts zwischen {id} und {beside} ({place}): eine Führung näher am Fräsermaß wählen.</translation>
    </message>
    <message>
        <source>In the vice with the {surface} up and the {lies} against the fence: {diameter} wide, at its mark {along} and {below} below the face; stop at {stop}, {point} to the point.</source>
        <translation>Im Schraubstock, {surface} oben, {lies} am Anschlag: {diameter} weit, am Anriss {along} und {below} unter der Vorderseite; Tiefenanschlag bei {stop}, bis zur Spitze {point}.</translation>
    </message>
    <message>
        <source>In the waste, too, a drill that breaks into a hole finds wood on one side only, and wanders: the rest of the bore follows.</source>
        <translation>Auch im Abfall findet ein Bohrer, der in ein Loch einbricht, nur auf einer Seite Holz und verläuft: der Rest der Bohrung folgt ihm.</translation>
    </message>
    <message>
        <source>In the waste, too, a drill that meets a hole wanders, and a pin whose hole is cut stands loose.</source>
        <translation>Auch im Abfall verläuft ein Bohrer, der auf eine Bohrung trifft, und ein Stift in einer angeschnittenen Bohrung sitzt lose.</translation>
    </message>
    <message>
        <source>In the way: {names}.</source>
        <translation>Im Weg: {names}.</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>Inches, &amp;decimal</source>
        <translation>Zoll, &amp;dezimal</translation>
    </message>
    <message>
        <source>Inches, &amp;fractions</source>
        <translation>Zoll, &amp;Brüche</translation>
    </message>
    <message>
        <source>Insert</source>
        <translation>Einfg</translation>
    </message>
    <message>
        <source>Inside an opening feed clockwise, seen from above: against the turning of the cutter. Never climb-cut.</source>
        <translation>In einer Öffnung von oben gesehen im Uhrzeigersinn führen: gegen die Drehung des Fräsers. Nie im Gleichlauf.</translation>
    </message>
    <message>
        <source>Inside the wider bore there is no wood left for {pin}.</source>
        <translation>In der weiteren Bohrung bleibt kein Holz für {pin}.</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Invented for demonstration: eight tuners through the face, four to a side, and a truss rod's pocket that is there already.</source>
        <translation>Zur Vorführung erfunden: acht Mechaniken durch die Vorderseite, vier je Seite, und eine schon vorhandene Halsstabtasche.</translation>
    </message>
    <message>
        <source>Invented for demonstration: four thin posts through the sides into one wide slot, as on a small fretted instrument.</source>
        <translation>Zur Vorführung erfunden: vier dünne Wellen durch die Seiten in einen breiten Schlitz, wie an einem kleinen Bundinstrument.</translation>
    </message>
    <message>
        <source>Invented for demonstration: four wide posts in one row along the bass edge.</source>
        <translation>Zur Vorführung erfunden: vier dicke Wellen in einer Reihe entlang der Basskante.</translation>
    </message>
    <message>
        <source>Invented for demonstration: six rollers of 10 mm through the sides into two slots.</source>
        <translation>Zur Vorführung erfunden: sechs Walzen von 10 mm durch die Seiten in zwei Schlitze.</translation>
    </message>
    <message>
        <source>Invented for demonstration: six tuners in one row along the bass edge. One deliberate snag teaches: the locating pin near the tip stands too close to the outline.</source>
        <translation>Zur Vorführung erfunden: sechs Mechaniken in einer Reihe entlang der Basskante. Ein absichtlicher Haken zum Lernen: der Passstift nahe der Spitze steht zu nah am Umriss.</translation>
    </message>
    <message>
        <source>Invented for demonstration: six tuners through the face, six through the sides into two slots.</source>
        <translation>Zur Vorführung erfunden: sechs Mechaniken durch die Vorderseite, sechs durch die Seiten in zwei Schlitze.</translation>
    </message>
    <message>
        <source>Invented for demonstration: six tuners through the face, three to a side, a face veneer over a scarf joint.</source>
        <translation>Zur Vorführung erfunden: sechs Mechaniken durch die Vorderseite, drei je Seite, ein Deckfurnier über einer Schäftung.</translation>
    </message>
    <message>
        <source>Invented for demonstration: six tuners to a side, all through the face.</source>
        <translation>Zur Vorführung erfunden: sechs Mechaniken je Seite, alle durch die Vorderseite.</translation>
    </message>
    <message>
        <source>Invented for demonstration: the mixed head with one tuner through the side slid 10 mm too far, and three deliberate snags from that one slide. A note in the job book tells what happened inside the wood.</source>
        <translation>Zur Vorführung erfunden: die gemischte Kopfplatte mit einer um 10 mm zu weit geschobenen Mechanik durch die Seite, und drei absichtliche Haken davon. Eine Notiz im Werkbuch sagt, was im Holz geschehen ist.</translation>
    </message>
    <message>
        <source>Invented for demonstration: the slotted head with three deliberate snags. Each has a note in the job book that names it: find them, and cure them by dragging.</source>
        <translation>Zur Vorführung erfunden: die geschlitzte Kopfplatte mit drei absichtlichen Haken. Zu jedem steht eine Notiz im Werkbuch, die ihn nennt: finden und durch Ziehen beheben.</translation>
    </message>
    <message>
        <source>It breaks off before its end: use the version before it, if there is one.</source>
        <translation>Sie bricht vor dem Ende ab: die Fassung davor verwenden, falls es eine gibt.</translation>
    </message>
    <message>
        <source>It breaks off or is damaged, as after a fault of the disk.</source>
        <translation>Es bricht ab oder ist beschädigt, wie nach einem Fehler der Platte.</translation>
    </message>
    <message>
        <source>It cannot be done just now.</source>
        <translation>Das geht gerade nicht.</translation>
    </message>
    <message>
        <source>It cannot be opened: {why}.</source>
        <translation>Es lässt sich nicht öffnen: {why}.</translation>
    </message>
    <message>
        <source>It chips and lifts where a tool comes out of it: clamp a board over it, use sharp tools and go slowly there. A veneer glued over it holds it down.</source>
        <translation>Sie splittert und hebt sich, wo ein Werkzeug aus ihr austritt: ein Brett darüber zwingen, scharfe Werkzeuge nehmen und dort langsam arbeiten. Ein darüber geleimtes Furnier hält sie nieder.</translation>
    </message>
    <message>
        <source>It covers what is there already: open it over {names} with a knife.</source>
        <translation>Es deckt zu, was schon da ist: über {names} mit dem Messer öffnen.</translation>
    </message>
    <message>
        <source>It has happened {count} times since this opened.</source>
        <translation>Seit dem Öffnen ist das {count}-mal vorgekommen.</translation>
    </message>
    <message>
        <source>It has two corrections of {printer} for {paper}: keep the one that is right.</source>
        <translation>Sie hat zwei Korrekturen von {printer} für {paper}: die richtige behalten.</translation>
    </message>
    <message>
        <source>It holds no layout.</source>
        <translation>Es enthält keinen Entwurf.</translation>
    </message>
    <message>
        <source>It is drilled from the square edge, through all that stands between the edge and the seat.</source>
        <translation>Gebohrt wird von der geraden Kante aus, durch alles, was zwischen ihr und dem Sitz steht.</translation>
    </message>
    <message>
        <source>It is not certain that the disk keeps what was written</source>
        <translation>Es ist nicht sicher, dass der Datenträger behält, was geschrieben wurde</translation>
    </message>
    <message>
        <source>It is not certain that the layout was saved</source>
        <translation>Es ist nicht sicher, dass der Entwurf gespeichert wurde</translation>
    </message>
    <message>
        <source>It is not sound JSON: a comma too many {place}</source>
        <translation>Kein richtiges JSON: ein Komma zu viel {place}</translation>
    </message>
    <message>
        <source>It is not sound JSON: something is wrong or missing {place}</source>
        <translation>Kein richtiges JSON: etwas stimmt nicht oder fehlt {place}</translation>
    </message>
    <message>
        <source>It is not sound JSON: something stands behind its end {place}</source>
        <translation>Kein richtiges JSON: hinter dem Ende steht noch etwas {place}</translation>
    </message>
    <message>
        <source>It is not text in UTF-8.</source>
        <translation>Sie ist kein Text in UTF-8.</translation>
    </message>
    <message>
        <source>It is {deep} deep to the drill's point, the drill {drill} is {length} long: find a longer one.</source>
        <translation>Bis zur Spitze des Bohrers {deep} tief, der Bohrer {drill} ist nur {length} lang: einen längeren suchen.</translation>
    </message>
    <message>
        <source>It leaves {left_depth} of wood standing at {at}, more than its own diameter: a slimmer cutter would get farther in.</source>
        <translation>Er lässt {left_depth} Holz stehen ({at}), mehr als sein eigener Durchmesser: ein schlankerer Fräser käme weiter hinein.</translation>
    </message>
    <message>
        <source>It lies {nearest} from the nearest edge of the blank, the drill press has a throat of {throat}: drill it by hand with a guide.</source>
        <translation>{nearest} von der nächsten Kante des Rohlings entfernt, die Ausladung der Bohrmaschine ist {throat}: von Hand mit Führung bohren.</translation>
    </message>
    <message>
        <source>It may stand here.</source>
        <translation>Hier darf er stehen.</translation>
    </message>
    <message>
        <source>It meets {hole}, which is there already: plug that first, for a drill wanders where its point or its rim finds no wood.</source>
        <translation>Sie trifft auf {hole}, die schon da ist: diese zuerst zustopfen, denn ein Bohrer verläuft, wo Spitze oder Rand kein Holz finden.</translation>
    </message>
    <message>
        <source>It names a field twice, at {found}: keep the one that is right.</source>
        <translation>Sie nennt ein Feld zweimal, bei {found}: das richtige behalten.</translation>
    </message>
    <message>
        <source>It needs a tilt of {tilt}, the table of the drill press tilts to {most}: move the tuner or make a wedge.</source>
        <translation>Nötig sind {tilt} Neigung, der Bohrtisch neigt sich bis {most}: die Mechanik versetzen oder einen Keil machen.</translation>
    </message>
    <message>
        <source>It pulls with {pull:.0f} N, as a weight of {weight:.1f} kg would.</source>
        <translation>Sie zieht mit {pull:.0f} N, wie ein Gewicht von {weight:.1f} kg.</translation>
    </message>
    <message>
        <source>It reaches only {step_of} into the wood from the back.</source>
        <translation>Er reicht von der Rückseite nur {step_of} ins Holz.</translation>
    </message>
    <message>
        <source>It reaches {down} into the wood, because {binds}; the wood is {thickness} thick, and even turned over it would have to reach {half}.</source>
        <translation>Er reicht {down} ins Holz, denn {binds}; das Holz ist {thickness} dick, und selbst gewendet müsste er {half} weit reichen.</translation>
    </message>
    <message>
        <source>It reaches {down} into the wood, because {binds}; {of} is {depth} deep.</source>
        <translation>Er reicht {down} ins Holz, denn {binds}; Tiefe von {of}: {depth}.</translation>
    </message>
    <message>
        <source>It runs through {ear} or its glue line: the ear must be on and dry.</source>
        <translation>Es geht durch {ear} oder dessen Leimfuge: das Ohr muss angeleimt und trocken sein.</translation>
    </message>
    <message>
        <source>It stands {by} mm beyond the wood at either end.</source>
        <translation>Er steht an beiden Enden {by} mm über das Holz hinaus.</translation>
    </message>
    <message>
        <source>It was saved as {name}: save it again as UTF-8.</source>
        <translation>Sie wurde als {name} gespeichert: erneut als UTF-8 speichern.</translation>
    </message>
    <message>
        <source>It was set aside as {aside}, nothing of it is lost; a starting rack takes its place.</source>
        <translation>Er wurde als {aside} beiseitegelegt, nichts davon ist verloren; ein Anfangsbestand tritt an seine Stelle.</translation>
    </message>
    <message>
        <source>It would scratch and dent what has been sanded already.</source>
        <translation>Es würde Geschliffenes verkratzen und eindrücken.</translation>
    </message>
    <message>
        <source>Its bearing and its cutter differ in size, so it cannot copy a wall that is cut already.</source>
        <translation>Anlaufring und Schneide sind verschieden groß, er kann keine schon geschnittene Wand kopieren.</translation>
    </message>
    <message>
        <source>Its bearing is {height} high and {contact} have to rub on the template: take a bit with a higher bearing, or ask for less in the margins.</source>
        <translation>Sein Anlaufring ist {height} hoch, und {contact} müssen an der Schablone anliegen: einen Fräser mit höherem Ring nehmen oder weniger verlangen.</translation>
    </message>
    <message>
        <source>Its bearing is {height} high and {contact} have to rub: take a bit with a higher bearing, or ask for less in the margins.</source>
        <translation>Sein Anlaufring ist {height} hoch, und {contact} müssen anliegen: einen Fräser mit höherem Ring nehmen oder weniger verlangen.</translation>
    </message>
    <message>
        <source>Its cutter is wider than what follows the template, so all {cutting_length} of its cutting edges have to be down in the wood before it may touch the template, and a pass may take only {first}.</source>
        <translation>Sein Schneidenmaß ist breiter als das, was der Schablone folgt; deshalb müssen alle {cutting_length} seiner Schneiden im Holz sein, bevor er die Schablone berühren darf, und ein Durchgang darf nur {first} nehmen.</translation>
    </message>
    <message>
        <source>Its cutter is wider than what follows the template, so the template opening is only {opening} wide and the {cutter} cutter cannot be lowered through it.</source>
        <translation>Sein Schneidenmaß ist breiter als das, was der Schablone folgt; die Schablonenöffnung ist nur {opening} breit, und der Fräser mit {cutter} lässt sich nicht hindurchsenken.</translation>
    </message>
    <message>
        <source>Its cutting edges are {cutting_length} long and a pass may take {first}: so high up in the {template} template they leave {left} of the {what} to rub, and {contact} are wanted. A template of {thick} would do, or a cutting length up to {most}.</source>
        <translation>Seine Schneiden sind {cutting_length} lang, und ein Durchgang darf {first} nehmen: so hoch in der {template} dicken Schablone lassen sie {left} zum Anliegen ({what}), gewünscht sind {contact}. Eine Schablone von {thick} ginge, oder Schneiden bis {most} Länge.</translation>
    </message>
    <message>
        <source>Its hole</source>
        <translation>Sein Loch</translation>
    </message>
    <message>
        <source>Its line comes out {face} from the {line} on the face and {back} on the back; it is {length} long.</source>
        <translation>Die Fuge tritt auf der Vorderseite {face} von der {line} aus und auf der Rückseite {back}; sie ist {length} lang.</translation>
    </message>
    <message>
        <source>Its line comes out {face} from the {line} on the face, and on the back {back} behind it; it is {length} long.</source>
        <translation>Die Fuge tritt auf der Vorderseite {face} von der {line} aus und auf der Rückseite {back} dahinter; sie ist {length} lang.</translation>
    </message>
    <message>
        <source>Its line on the back</source>
        <translation>Ihre Fuge auf der Rückseite</translation>
    </message>
    <message>
        <source>Its longer side is</source>
        <translation>Längere Seite</translation>
    </message>
    <message>
        <source>Its place is unwise for {names}</source>
        <translation>Sein Platz ist unklug für {names}</translation>
    </message>
    <message>
        <source>Its place makes {names} impossible</source>
        <translation>Sein Platz macht {names} unmöglich</translation>
    </message>
    <message>
        <source>Its place makes {names} unsafe</source>
        <translation>Sein Platz macht {names} unsicher</translation>
    </message>
    <message>
        <source>Its {cutter} cutter does not get everywhere in {of}.</source>
        <translation>Der Fräser mit {cutter} kommt nicht überall hin: {of}.</translation>
    </message>
    <message>
        <source>Its {cutter} cutter does not pass {of}, which is {width} wide where it is narrowest: up to {width} would.</source>
        <translation>Der Fräser mit {cutter} passt nicht durch {of}; die engste Stelle ist {width} breit, bis {width} ginge.</translation>
    </message>
    <message>
        <source>Its {shank} shank is thicker than its {diameter} bearing and would rub first: check the numbers in the rack.</source>
        <translation>Sein Schaft von {shank} ist dicker als der Anlaufring von {diameter} und läge zuerst an: die Zahlen im Bestand prüfen.</translation>
    </message>
    <message>
        <source>Job book</source>
        <translation>Werkbuch</translation>
    </message>
    <message>
        <source>Join into one slot</source>
        <translation>Zu einem Schlitz vereinen</translation>
    </message>
    <message>
        <source>Join pages row by row from the nut end, left to right: cut one page along the row of short strokes, lay it on its neighbour so that lozenges with the same letter meet, tape; then join the rows in the same way.</source>
        <translation>Seiten Reihe für Reihe vom Sattelende her zusammensetzen, von links nach rechts: eine Seite entlang der kurzen Striche schneiden, so auf die Nachbarseite legen, dass Rauten mit gleichem Buchstaben aufeinanderliegen, kleben; dann die Reihen ebenso.</translation>
    </message>
    <message>
        <source>K, Shift+K</source>
        <translation>K, Umschalt+K</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Keep one axis</source>
        <translation>Eine Richtung beibehalten</translation>
    </message>
    <message>
        <source>Keep the slot away from {pocket}, which is in the blank already, or fill that with wood first.</source>
        <translation>Den Schlitz von {pocket} fernhalten, denn die Tasche ist schon im Rohling, oder sie zuerst mit Holz füllen.</translation>
    </message>
    <message>
        <source>Keep the table set and turn the blank over about the centreline.</source>
        <translation>Den Tisch eingestellt lassen und den Rohling um die Mittellinie wenden.</translation>
    </message>
    <message>
        <source>Keep this one as mine</source>
        <translation>Als meinen behalten</translation>
    </message>
    <message>
        <source>Keeps proposals from moving it and from giving it another string.</source>
        <translation>Vorschläge versetzen sie nicht und geben ihr keine andere Saite.</translation>
    </message>
    <message>
        <source>Kept for you in {path}. Layouts hold copies of their own.</source>
        <translation>Für Sie aufbewahrt in {path}. Entwürfe enthalten eigene Kopien.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Kind of edge drawn next</source>
        <translation>Art der nächsten Kante</translation>
    </message>
    <message>
        <source>Lacquer or oil: a step of the order after cleaning up. The bores that hold tuners in the face, or their pressed-in bushings, are cleared of it then.</source>
        <translation>Lack oder Öl: ein Schritt der Folge nach dem Säubern. Danach werden die Bohrungen ausgeräumt, die Mechaniken in der Vorderseite oder ihre eingepressten Buchsen halten.</translation>
    </message>
    <message>
        <source>Lang&amp;uage</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>Large tuners, as for a bass, go through the face: choose so on the {side} side, or take usual ones.</source>
        <translation>Große Mechaniken, wie für einen Bass, gehen durch die Vorderseite: das für die Seite {side} wählen oder übliche nehmen.</translation>
    </message>
    <message>
        <source>Larger (+)</source>
        <translation>Größer (+)</translation>
    </message>
    <message>
        <source>Largest bit that passes</source>
        <translation>Größter passender Fräser</translation>
    </message>
    <message>
        <source>Last change written down: {when:%Y-%m-%d %H:%M:%S}</source>
        <translation>Letzte Änderung aufgeschrieben: {when:%d.%m.%Y, %H:%M:%S}</translation>
    </message>
    <message>
        <source>Later (step {step}): {words}</source>
        <translation>Später (Schritt {step}): {words}</translation>
    </message>
    <message>
        <source>Later: {words} The stop above reckons with it.</source>
        <translation>Später: {words} Die Bohrtiefe oben rechnet damit.</translation>
    </message>
    <message>
        <source>Lay a &amp;photo or scan behind the drawing…</source>
        <translation>Ein &amp;Foto oder einen Scan hinter die Zeichnung legen…</translation>
    </message>
    <message>
        <source>Lay a line across the head and see what it cuts; drag its ends or the whole line.</source>
        <translation>Eine Linie über die Kopfplatte legen und sehen, was sie schneidet; Enden oder die ganze Linie ziehen.</translation>
    </message>
    <message>
        <source>Lay a slot across its way, or slide {item} to where a slot lies ahead.</source>
        <translation>Einen Schlitz quer in den Weg legen oder {item} dorthin schieben, wo ein Schlitz liegt.</translation>
    </message>
    <message>
        <source>Lay a spoil board below: the last pass comes through.</source>
        <translation>Ein Opferbrett unterlegen: der letzte Durchgang geht durch.</translation>
    </message>
    <message>
        <source>Lay it there</source>
        <translation>So hinlegen</translation>
    </message>
    <message>
        <source>Lay {name} behind the drawing</source>
        <translation>{name} hinter die Zeichnung legen</translation>
    </message>
    <message>
        <source>Lay {path} behind the drawing</source>
        <translation>{path} hinter die Zeichnung legen</translation>
    </message>
    <message>
        <source>Laying out the pages…</source>
        <translation>Die Seiten werden gelegt…</translation>
    </message>
    <message>
        <source>Lead it over its own post, give it another post, or set one of the two axes deeper.</source>
        <translation>Über die eigene Welle führen, eine andere Welle geben oder eine der beiden Achsen tiefer setzen.</translation>
    </message>
    <message>
        <source>Lead it past the other side of its own post, or give it another post.</source>
        <translation>An der anderen Seite der eigenen Welle vorbeiführen oder eine andere Welle geben.</translation>
    </message>
    <message>
        <source>Lead string {one} to {other} and string {two} to {tuner}</source>
        <translation>Saite {one} zu {other} und Saite {two} zu {tuner} führen</translation>
    </message>
    <message>
        <source>Lead string {string} over the post of {tuner}</source>
        <translation>Saite {string} über die Welle von {tuner} führen</translation>
    </message>
    <message>
        <source>Lead string {string} past the bass side of the post of {tuner}</source>
        <translation>Saite {string} auf der Bassseite an der Welle von {tuner} vorbeiführen</translation>
    </message>
    <message>
        <source>Lead string {string} past the treble side of the post of {tuner}</source>
        <translation>Saite {string} auf der Diskantseite an der Welle von {tuner} vorbeiführen</translation>
    </message>
    <message>
        <source>Lead string {string} under the post of {tuner}</source>
        <translation>Saite {string} unter der Welle von {tuner} hindurchführen</translation>
    </message>
    <message>
        <source>Lean the head back less, wind the string higher on its post, or set what holds it down higher or farther from the nut.</source>
        <translation>Die Kopfplatte weniger neigen, die Saite höher um ihre Welle wickeln oder, was sie niederhält, höher oder weiter weg vom Sattel setzen.</translation>
    </message>
    <message>
        <source>Least height of the follower that rubs on the template.</source>
        <translation>Geringste Höhe der Führung, die an der Schablone anliegt.</translation>
    </message>
    <message>
        <source>Least width of board that is to stay between two openings of the template.</source>
        <translation>Geringste Breite des Bretts, die zwischen zwei Öffnungen der Schablone bleiben soll.</translation>
    </message>
    <message>
        <source>Least wood between a drilling and a slot's wall.</source>
        <translation>Geringste Holzstärke zwischen einer Bohrung und einer Schlitzwand.</translation>
    </message>
    <message>
        <source>Least wood between a drilling and the edge of the finished head.</source>
        <translation>Geringste Holzstärke zwischen einer Bohrung und der Kante der fertigen Kopfplatte.</translation>
    </message>
    <message>
        <source>Least wood between a drilling and the flat cut for a side tuner's plate.</source>
        <translation>Geringste Holzstärke zwischen einer Bohrung und der Fläche, die für die Platte einer Seitenmechanik gearbeitet wird.</translation>
    </message>
    <message>
        <source>Least wood between a drilling and the slope at the nut end of a slot.</source>
        <translation>Geringste Holzstärke zwischen einer Bohrung und der Schräge am Sattelende eines Schlitzes.</translation>
    </message>
    <message>
        <source>Least wood between two drillings, measured in space between the real cylinders.</source>
        <translation>Geringste Holzstärke zwischen zwei Bohrungen, im Raum zwischen den wirklichen Zylindern gemessen.</translation>
    </message>
    <message>
        <source>Leave as it is</source>
        <translation>Lassen, wie es ist</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Leave it where it is</source>
        <translation>Lassen, wo sie ist</translation>
    </message>
    <message>
        <source>Leave the blank {by} mm longer at the {end} end.</source>
        <translation>Den Rohling um {by} mm länger lassen ({end}).</translation>
    </message>
    <message>
        <source>Leave the flat out</source>
        <translation>Die Fläche weglassen</translation>
    </message>
    <message>
        <source>Leave the line, add a slot beside it</source>
        <translation>Die Linie lassen, einen Schlitz daneben setzen</translation>
    </message>
    <message>
        <source>Leave the ramp out</source>
        <translation>Die Rampe weglassen</translation>
    </message>
    <message>
        <source>Leaves a mark that does not cost the piece: {chance}.</source>
        <translation>Hinterlässt eine Spur, die das Stück nicht kostet: {chance}.</translation>
    </message>
    <message>
        <source>Left out, because they cannot be reached: {left_out}.</source>
        <translation>Ausgelassen, weil nicht erreichbar: {left_out}.</translation>
    </message>
    <message>
        <source>Left out, because they cannot be reached: {title}.</source>
        <translation>Ausgelassen, weil nicht erreichbar: {title}.</translation>
    </message>
    <message>
        <source>Left out: {skipped}.</source>
        <translation>Ausgelassen: {skipped}.</translation>
    </message>
    <message>
        <source>Left to pare by hand</source>
        <translation>Von Hand nachzustechen</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>Left, by the plan</source>
        <translation>Übrig, nach Plan</translation>
    </message>
    <message>
        <source>Left-handed</source>
        <translation>Linkshändig</translation>
    </message>
    <message>
        <source>Left-handed mirror</source>
        <translation>Linkshändig spiegeln</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Length before the slot</source>
        <translation>Länge vor dem Schlitz</translation>
    </message>
    <message>
        <source>Length of the board whose one side is raised by blocks to tilt the work.</source>
        <translation>Länge des Bretts, dessen eine Seite zum Neigen auf Klötze gelegt wird.</translation>
    </message>
    <message>
        <source>Length of the edge</source>
        <translation>Länge der Kante</translation>
    </message>
    <message>
        <source>Length of the joint</source>
        <translation>Länge der Schäftung</translation>
    </message>
    <message>
        <source>Length over all</source>
        <translation>Länge über alles</translation>
    </message>
    <message>
        <source>Length that drills</source>
        <translation>Bohrende Länge</translation>
    </message>
    <message>
        <source>Length, or width of the spot</source>
        <translation>Länge, oder Breite der Stelle</translation>
    </message>
    <message>
        <source>Lengthen {what} by {by} at its {end} end</source>
        <translation>{what} um {by} verlängern ({end})</translation>
    </message>
    <message>
        <source>Less than a minute.</source>
        <translation>Weniger als eine Minute.</translation>
    </message>
    <message>
        <source>Let go of snapping</source>
        <translation>Nicht fangen</translation>
    </message>
    <message>
        <source>Let go of your own order: the one with the fewest changes again.</source>
        <translation>Die eigene Folge aufgeben: wieder die mit den wenigsten Wechseln.</translation>
    </message>
    <message>
        <source>Let the picture show more faintly.</source>
        <translation>Das Bild schwächer zeigen.</translation>
    </message>
    <message>
        <source>Let the picture show more strongly.</source>
        <translation>Das Bild stärker zeigen.</translation>
    </message>
    <message>
        <source>Let the two posts change strings, lead one string past the other side of its post, or have all posts served anew under Strings.</source>
        <translation>Die Saiten der beiden Wellen tauschen, eine auf der anderen Seite an ihrer Welle vorbeiführen oder unter „Saiten“ alle Wellen neu zuordnen lassen.</translation>
    </message>
    <message>
        <source>Letter on its side</source>
        <translation>Letter quer</translation>
    </message>
    <message>
        <source>Letter upright</source>
        <translation>Letter hoch</translation>
    </message>
    <message>
        <source>Letters at {percent} % of the desktop's.</source>
        <translation>Schrift mit {percent} % der Größe des Systems.</translation>
    </message>
    <message>
        <source>Letters of this size, in every window.</source>
        <translation>Schrift dieser Größe, in jedem Fenster.</translation>
    </message>
    <message>
        <source>Level of grey</source>
        <translation>Grauwert</translation>
    </message>
    <message>
        <source>Level of grey between head and background</source>
        <translation>Grauwert zwischen Kopfplatte und Hintergrund</translation>
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
        <translation>Hell oder dunkel wie das System, auch wenn es wechselt.</translation>
    </message>
    <message>
        <source>Lines that cross one another are too long to be worked out: check the unit of the drawing, or draw the outline as one closed line.</source>
        <translation>Linien, die einander kreuzen, sind zu lang, um ausgewertet zu werden: die Einheit der Zeichnung prüfen oder den Umriss als eine geschlossene Linie zeichnen.</translation>
    </message>
    <message>
        <source>Lines touch or cross one another; the outer border of what they enclose was taken.</source>
        <translation>Linien berühren oder kreuzen sich; genommen wurde der äußere Rand dessen, was sie umschließen.</translation>
    </message>
    <message>
        <source>List the hardware</source>
        <translation>Mechaniken auflisten</translation>
    </message>
    <message>
        <source>List what was done, and go back to any of it.</source>
        <translation>Auflisten, was getan wurde, und zu jedem Schritt zurückgehen.</translation>
    </message>
    <message>
        <source>Lists &amp;lower</source>
        <translation>Listen n&amp;iedriger</translation>
    </message>
    <message>
        <source>Lists &amp;taller</source>
        <translation>&amp;Listen höher</translation>
    </message>
    <message>
        <source>Little wood above or below</source>
        <translation>Wenig Holz darüber oder darunter</translation>
    </message>
    <message>
        <source>Locating pin</source>
        <translation>Passstift</translation>
    </message>
    <message>
        <source>Locating pin hole {of}</source>
        <translation>Passstiftbohrung {of}</translation>
    </message>
    <message>
        <source>Locating pin holes</source>
        <translation>Passstiftbohrungen</translation>
    </message>
    <message>
        <source>Locating pin near the blank's edge</source>
        <translation>Passstift nahe am Rand des Rohlings</translation>
    </message>
    <message>
        <source>Locating pin, {id}</source>
        <translation>Passstift, {id}</translation>
    </message>
    <message>
        <source>Lock the picture</source>
        <translation>Das Bild sperren</translation>
    </message>
    <message>
        <source>Look at the head from this side.</source>
        <translation>Die Kopfplatte von dieser Seite ansehen.</translation>
    </message>
    <message>
        <source>Look at x {x:.1f}, y {y:.1f}, z {z:.1f} mm.</source>
        <translation>Siehe x {x:.1f}; y {y:.1f}; z {z:.1f} mm.</translation>
    </message>
    <message>
        <source>Look closer.</source>
        <translation>Näher heran.</translation>
    </message>
    <message>
        <source>Look for better places</source>
        <translation>Bessere Plätze suchen</translation>
    </message>
    <message>
        <source>Looking at what lies inside the outline…</source>
        <translation>Suchen, was im Umriss liegt…</translation>
    </message>
    <message>
        <source>Looking for a move that cures it …</source>
        <translation>Ein Schritt, der es behebt, wird gesucht …</translation>
    </message>
    <message>
        <source>Looking for better places…</source>
        <translation>Bessere Plätze werden gesucht…</translation>
    </message>
    <message>
        <source>Looking for places…</source>
        <translation>Plätze werden gesucht…</translation>
    </message>
    <message>
        <source>Looking for the best post of each string…</source>
        <translation>Die beste Welle für jede Saite wird gesucht…</translation>
    </message>
    <message>
        <source>Loop</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>Loops of the drawing</source>
        <translation>Linienzüge der Zeichnung</translation>
    </message>
    <message>
        <source>Lying bar</source>
        <translation>Liegender Balken</translation>
    </message>
    <message>
        <source>Machines and template</source>
        <translation>Maschinen und Schablone</translation>
    </message>
    <message>
        <source>Machines: {others}.</source>
        <translation>Maschinen: {others}.</translation>
    </message>
    <message>
        <source>Made for the bit</source>
        <translation>Gemacht für den Fräser</translation>
    </message>
    <message>
        <source>Make a copy to change</source>
        <translation>Eine Kopie zum Ändern</translation>
    </message>
    <message>
        <source>Make a deep centre mark, use a guide block, or start with a short stiff drill.</source>
        <translation>Tief ankörnen, einen Führungsblock verwenden oder mit einem kurzen, steifen Bohrer beginnen.</translation>
    </message>
    <message>
        <source>Make a row along the edge</source>
        <translation>Reihe entlang der Kante bilden</translation>
    </message>
    <message>
        <source>Make a row on a line</source>
        <translation>Reihe auf einer Linie bilden</translation>
    </message>
    <message>
        <source>Make a wedge for the rest of the angle.</source>
        <translation>Für den Rest des Winkels einen Keil machen.</translation>
    </message>
    <message>
        <source>Make another of what is held.</source>
        <translation>Vom Gehaltenen ein weiteres machen.</translation>
    </message>
    <message>
        <source>Make one of them narrower.</source>
        <translation>Einen von beiden schmaler machen.</translation>
    </message>
    <message>
        <source>Make the blank {by} larger at the {end}</source>
        <translation>Den Rohling um {by} größer machen ({end})</translation>
    </message>
    <message>
        <source>Make the blank {by} larger at the {end}, by an ear where the wood is no wider</source>
        <translation>Den Rohling um {by} größer machen ({end}), mit einem Ohr, wo das Holz nicht breiter ist</translation>
    </message>
    <message>
        <source>Make the blank {by} mm larger at the {side}, or glue on an ear.</source>
        <translation>Den Rohling um {by} mm größer machen ({side}) oder ein Ohr anleimen.</translation>
    </message>
    <message>
        <source>Make the blank {by} mm larger at the {side}.</source>
        <translation>Den Rohling um {by} mm größer machen ({side}).</translation>
    </message>
    <message>
        <source>Make the edge under side tuners straight</source>
        <translation>Die Kante unter Seitenmechaniken gerade machen</translation>
    </message>
    <message>
        <source>Make the flat for {other} shorter, or move one of the two.</source>
        <translation>Die Fläche für {other} kürzer machen oder eines der beiden versetzen.</translation>
    </message>
    <message>
        <source>Make the flat shorter or shallower there, or move one of the two.</source>
        <translation>Die Fläche dort kürzer oder flacher machen oder eines von beiden versetzen.</translation>
    </message>
    <message>
        <source>Make the nut {by} mm wider, or set the strings closer together in it.</source>
        <translation>Den Sattel {by} mm breiter machen oder die Saiten in ihm enger setzen.</translation>
    </message>
    <message>
        <source>Make the outline s&amp;ymmetric</source>
        <translation>Den Umriss s&amp;ymmetrisch machen</translation>
    </message>
    <message>
        <source>Make the outline symmetric</source>
        <translation>Umriss symmetrisch machen</translation>
    </message>
    <message>
        <source>Make the ramp of {slot} narrower or shorter there.</source>
        <translation>Die Rampe von {slot} dort schmaler oder kürzer machen.</translation>
    </message>
    <message>
        <source>Make the ramp of {slot} shorter, narrower or less deep there, or move one of the two.</source>
        <translation>Die Rampe von {slot} dort kürzer, schmaler oder flacher machen oder eines von beiden versetzen.</translation>
    </message>
    <message>
        <source>Make the ramp of {slot} {ramp_words}</source>
        <translation>Neues Maß für die Rampe von {slot}: {ramp_words}</translation>
    </message>
    <message>
        <source>Make the ramp {amount} mm less deep.</source>
        <translation>Die Rampe {amount} mm flacher machen.</translation>
    </message>
    <message>
        <source>Make the ramp {amount} mm narrower on that side, that is {twice} mm in all, or move {slot}.</source>
        <translation>Die Rampe auf dieser Seite {amount} mm schmaler machen, also {twice} mm im Ganzen, oder {slot} verschieben.</translation>
    </message>
    <message>
        <source>Make the ramp {amount} mm shorter.</source>
        <translation>Die Rampe {amount} mm kürzer machen.</translation>
    </message>
    <message>
        <source>Make the retainer narrower, or move its screw away from the post.</source>
        <translation>Den Niederhalter schmaler machen oder seine Schraube von der Welle weg versetzen.</translation>
    </message>
    <message>
        <source>Make the template</source>
        <translation>Die Schablone machen</translation>
    </message>
    <message>
        <source>Make the template anew and tick its step again; or put the drawing back.</source>
        <translation>Die Schablone neu machen und ihren Schritt noch einmal abhaken; oder die Zeichnung zurückstellen.</translation>
    </message>
    <message>
        <source>Make the template for this plan</source>
        <translation>Die Schablone für diesen Plan machen</translation>
    </message>
    <message>
        <source>Make {ear} longer by {by} mm at the {end} end.</source>
        <translation>{ear} um {by} mm länger machen ({end}).</translation>
    </message>
    <message>
        <source>Make {ear} narrower by {measured} mm, or move {item} as much.</source>
        <translation>{ear} um {measured} mm schmaler machen oder {item} um so viel versetzen.</translation>
    </message>
    <message>
        <source>Make {ear} wider by {measured} mm, or move {item} as much.</source>
        <translation>{ear} um {measured} mm breiter machen oder {item} um so viel versetzen.</translation>
    </message>
    <message>
        <source>Make {node} a corner</source>
        <translation>{node} zur Ecke machen</translation>
    </message>
    <message>
        <source>Make {node} smooth</source>
        <translation>{node} glätten</translation>
    </message>
    <message>
        <source>Make {opening} narrower or shorter, or widen the outline there.</source>
        <translation>{opening} schmaler oder kürzer machen oder den Umriss dort verbreitern.</translation>
    </message>
    <message>
        <source>Make {what} narrower by {by}</source>
        <translation>{what} um {by} schmaler machen</translation>
    </message>
    <message>
        <source>Make {what} wider by {by}</source>
        <translation>{what} um {by} breiter machen</translation>
    </message>
    <message>
        <source>Make {what} {ramp_words}.</source>
        <translation>Neues Maß für {what}: {ramp_words}.</translation>
    </message>
    <message>
        <source>Mandolin</source>
        <translation>Mandoline</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Mindestabstand</translation>
    </message>
    <message>
        <source>Margins wanted</source>
        <translation>Gewünschte Mindestabstände</translation>
    </message>
    <message>
        <source>Mark below the face</source>
        <translation>Anriss unter der Vorderseite</translation>
    </message>
    <message>
        <source>Mark on the edge</source>
        <translation>Anriss auf der Kante</translation>
    </message>
    <message>
        <source>Marked otherwise</source>
        <translation>Anders angezeichnet</translation>
    </message>
    <message>
        <source>Marking</source>
        <translation>Anreißen</translation>
    </message>
    <message>
        <source>Marks on the face</source>
        <translation>Zeichen auf der Vorderseite</translation>
    </message>
    <message>
        <source>Marks on {papers}.</source>
        <translation>Anrisse auf: {papers}.</translation>
    </message>
    <message>
        <source>May stray by</source>
        <translation>Abweichung bis</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Measure both bars of each page: {long} from end tick to end tick, or throw the page away.</source>
        <translation>Beide Balken jeder Seite messen: {long} von Endstrich zu Endstrich, sonst die Seite wegwerfen.</translation>
    </message>
    <message>
        <source>Measure places or distances of holes that one part joins: then it shows whether the part goes on.</source>
        <translation>Orte oder Abstände von Bohrungen messen, die ein Teil verbindet: dann zeigt sich, ob das Teil passt.</translation>
    </message>
    <message>
        <source>Measure the finished holes with a caliper; Enter goes to the next hole. An emptied cell is struck out. On the bass side of the centreline x is below zero; the sign may be left out.</source>
        <translation>Die fertigen Bohrungen mit dem Messschieber messen; Eingabe geht zur nächsten. Eine geleerte Zelle wird gestrichen. Auf der Bassseite der Mittellinie ist x unter null; das Vorzeichen darf fehlen.</translation>
    </message>
    <message>
        <source>Measure the finished piece and write each reading beside its plan; the Readings page of the job book takes them. x is from the centreline, treble side positive, y from the nut line, both to the middle of the hole; bores from the side: below the face in place of x. In {unit}.</source>
        <translation>Das fertige Stück messen und jeden Wert neben seinen Plan schreiben; die Messwerte-Seite des Werkbuchs nimmt sie auf. x von der Mittellinie, Diskantseite positiv, y von der Sattellinie, beide zur Mitte der Bohrung; Seitenbohrungen: statt x die Lage unter der Vorderseite. In {unit}.</translation>
    </message>
    <message>
        <source>Measure the hardware again: neither string hole nor lowest turn lies beyond the end of the post.</source>
        <translation>Die Mechanik nachmessen: weder Saitenloch noch unterste Windung liegt jenseits des Wellenendes.</translation>
    </message>
    <message>
        <source>Measure x and y of five holes or more, far from each other: then a printer that stretches shows.</source>
        <translation>x und y von fünf oder mehr Bohrungen messen, weit auseinander: dann zeigt sich, ob der Drucker dehnt.</translation>
    </message>
    <message>
        <source>Measure your own: how far the centre stands ahead of the full diameter.</source>
        <translation>Messen Sie Ihren eigenen: wie weit die Mitte dem vollen Durchmesser voraus ist.</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measured across the cutting edges.</source>
        <translation>Über die Schneiden gemessen.</translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation>Gemessen ab</translation>
    </message>
    <message>
        <source>Mend the shape it depends on.</source>
        <translation>Zuerst die Form in Ordnung bringen, von der es abhängt.</translation>
    </message>
    <message>
        <source>Middle button, or Space and drag</source>
        <translation>Mittlere Taste, oder Leertaste und ziehen</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Beachten</translation>
    </message>
    <message>
        <source>Mind:</source>
        <translation>Beachten:</translation>
    </message>
    <message>
        <source>Mind: {text}</source>
        <translation>Beachten: {text}</translation>
    </message>
    <message>
        <source>Minutes (common practice, no source: yours are better)</source>
        <translation>Minuten (übliche Praxis, ohne Quelle: Ihre sind besser)</translation>
    </message>
    <message>
        <source>Minutes found by the job book</source>
        <translation>Minuten aus dem Werkbuch</translation>
    </message>
    <message>
        <source>Mirror</source>
        <translation>Spiegeln</translation>
    </message>
    <message>
        <source>Mirror the whole layout about the centreline.</source>
        <translation>Den ganzen Entwurf an der Mittellinie spiegeln.</translation>
    </message>
    <message>
        <source>Mirrored</source>
        <translation>Gespiegelt</translation>
    </message>
    <message>
        <source>Mirrored. The left edge is still called bass, the right one treble: the thick strings run on the treble side now.</source>
        <translation>Gespiegelt. Die linke Kante heißt weiter Bass, die rechte Diskant: die dicken Saiten laufen jetzt auf der Diskantseite.</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>Money, both pieces</source>
        <translation>Geld, beide Stücke</translation>
    </message>
    <message>
        <source>More menus</source>
        <translation>Weitere Menüs</translation>
    </message>
    <message>
        <source>More than 10 degrees: it tends to catch in the nut.</source>
        <translation>Mehr als 10 Grad: sie hakt leicht im Sattel.</translation>
    </message>
    <message>
        <source>Mostly {one}, then {two}, then {three}.</source>
        <translation>Vor allem: {one}, dann {two}, dann {three}.</translation>
    </message>
    <message>
        <source>Mostly {one}, then {two}.</source>
        <translation>Vor allem: {one}, dann {two}.</translation>
    </message>
    <message>
        <source>Mostly {one}.</source>
        <translation>Vor allem: {one}.</translation>
    </message>
    <message>
        <source>Move as shown</source>
        <translation>Versetzen wie gezeigt</translation>
    </message>
    <message>
        <source>Move both, or choose smaller hardware.</source>
        <translation>Beide versetzen oder kleinere Mechaniken wählen.</translation>
    </message>
    <message>
        <source>Move instead</source>
        <translation>Stattdessen versetzen</translation>
    </message>
    <message>
        <source>Move it away from {pocket}, which is in the blank already.</source>
        <translation>Von {pocket} wegrücken: Die Tasche ist schon im Rohling.</translation>
    </message>
    <message>
        <source>Move picture</source>
        <translation>Bild versetzen</translation>
    </message>
    <message>
        <source>Move that wall of {opening} away by {needed} mm and lead the string down by a ramp, or give string {string} a post more in line with its place at the nut.</source>
        <translation>Diese Wand von {opening} um {needed} mm wegrücken und die Saite über eine Rampe hinabführen oder Saite {string} eine Welle geben, die mehr in der Flucht ihres Platzes am Sattel liegt.</translation>
    </message>
    <message>
        <source>Move that wall of {opening} away by {needed} mm, or give string {string} a post more in line with its place at the nut.</source>
        <translation>Diese Wand von {opening} um {needed} mm wegrücken oder Saite {string} eine Welle geben, die mehr in der Flucht ihres Platzes am Sattel liegt.</translation>
    </message>
    <message>
        <source>Move that wall of {opening} away, or give string {string} a post more in line with its place at the nut.</source>
        <translation>Diese Wand von {opening} wegrücken oder Saite {string} eine Welle geben, die mehr in der Flucht ihres Platzes am Sattel liegt.</translation>
    </message>
    <message>
        <source>Move the border between the drawing and the panel.</source>
        <translation>Die Grenze zwischen Zeichnung und Tafel versetzen.</translation>
    </message>
    <message>
        <source>Move the border between the panel and the lists below it.</source>
        <translation>Die Grenze zwischen Tafel und Listen darunter versetzen.</translation>
    </message>
    <message>
        <source>Move the border the other way.</source>
        <translation>Die Grenze in die andere Richtung versetzen.</translation>
    </message>
    <message>
        <source>Move the inner wall of {own} away by {lacking} mm, or drill {length} mm deeper, into that wall: there the bore gives the post's end its room.</source>
        <translation>Die Innenwand von {own} um {lacking} mm wegrücken oder {length} mm tiefer bohren, in diese Wand hinein: dort gibt die Bohrung dem Ende der Welle Platz.</translation>
    </message>
    <message>
        <source>Move the line itself</source>
        <translation>Die Linie selbst versetzen</translation>
    </message>
    <message>
        <source>Move the nodes beside that place apart.</source>
        <translation>Die Knoten neben dieser Stelle auseinanderziehen.</translation>
    </message>
    <message>
        <source>Move the nut end of {slot}</source>
        <translation>Sattelende von {slot} versetzen</translation>
    </message>
    <message>
        <source>Move the paper under the window</source>
        <translation>Das Papier unter dem Fenster verschieben</translation>
    </message>
    <message>
        <source>Move the pen by 1 mm; with Shift 10, with Alt 0.1</source>
        <translation>Den Stift um 1 mm bewegen; mit Umschalt 10, mit Alt 0,1</translation>
    </message>
    <message>
        <source>Move the picture</source>
        <translation>Bild versetzen</translation>
    </message>
    <message>
        <source>Move the pin, or have the pins proposed anew.</source>
        <translation>Den Passstift versetzen oder die Passstifte neu vorschlagen lassen.</translation>
    </message>
    <message>
        <source>Move the row “{what}” by {by} to the bass side</source>
        <translation>Die Reihe „{what}“ um {by} zur Bassseite versetzen</translation>
    </message>
    <message>
        <source>Move the row “{what}” by {by} to the nut</source>
        <translation>Die Reihe „{what}“ um {by} zum Sattel versetzen</translation>
    </message>
    <message>
        <source>Move the row “{what}” by {by} to the tip</source>
        <translation>Die Reihe „{what}“ um {by} zur Spitze versetzen</translation>
    </message>
    <message>
        <source>Move the row “{what}” by {by} to the treble side</source>
        <translation>Die Reihe „{what}“ um {by} zur Diskantseite versetzen</translation>
    </message>
    <message>
        <source>Move the tip end of {slot}</source>
        <translation>Spitzenende von {slot} versetzen</translation>
    </message>
    <message>
        <source>Move them apart, or hold both and join them into one slot.</source>
        <translation>Auseinanderrücken, oder beide halten und zu einem Schlitz vereinen.</translation>
    </message>
    <message>
        <source>Move tuners as proposed</source>
        <translation>Mechaniken wie vorgeschlagen versetzen</translation>
    </message>
    <message>
        <source>Move {id}</source>
        <translation>{id} versetzen</translation>
    </message>
    <message>
        <source>Move {item} by {away} mm along the head, or glue a veneer over the joint.</source>
        <translation>{item} um {away} mm längs der Kopfplatte verschieben, oder ein Furnier über die Schäftung leimen.</translation>
    </message>
    <message>
        <source>Move {item} by {by} mm the way its button points, or choose a shaft that much longer.</source>
        <translation>{item} um {by} mm dorthin versetzen, wohin der Flügel zeigt, oder einen um so viel längeren Schaft wählen.</translation>
    </message>
    <message>
        <source>Move {lead}</source>
        <translation>{lead} versetzen</translation>
    </message>
    <message>
        <source>Move {n} nodes</source>
        <translation>{n} Knoten bewegen</translation>
    </message>
    <message>
        <source>Move {n} things</source>
        <translation>{n} Teile versetzen</translation>
    </message>
    <message>
        <source>Move {opening} away from {item} by {amount} mm.</source>
        <translation>{opening} um {amount} mm von {item} wegrücken.</translation>
    </message>
    <message>
        <source>Move {opening} inwards, or make it shorter or narrower.</source>
        <translation>{opening} nach innen setzen oder kürzer oder schmaler machen.</translation>
    </message>
    <message>
        <source>Move {own} by {lacking} mm inwards, or choose a post with its hole {lacking} mm nearer the seat.</source>
        <translation>{own} um {lacking} mm nach innen setzen oder eine Welle wählen, deren Loch {lacking} mm näher am Sitz liegt.</translation>
    </message>
    <message>
        <source>Move {own} by {lacking} mm outwards, or choose a post with its hole {lacking} mm deeper.</source>
        <translation>{own} um {lacking} mm nach außen setzen oder eine Welle wählen, deren Loch {lacking} mm tiefer liegt.</translation>
    </message>
    <message>
        <source>Move {part} onto the head, or take it away.</source>
        <translation>{part} auf die Kopfplatte schieben oder wegnehmen.</translation>
    </message>
    <message>
        <source>Move {target}</source>
        <translation>{target} versetzen</translation>
    </message>
    <message>
        <source>Move {title} in the order</source>
        <translation>{title} in der Folge versetzen</translation>
    </message>
    <message>
        <source>Move {what} by {ways}</source>
        <translation>{what} versetzen: {ways}</translation>
    </message>
    <message>
        <source>Moves that cure snags are being looked for.</source>
        <translation>Schritte, die Haken beheben, werden gesucht.</translation>
    </message>
    <message>
        <source>Moving {n} tuners by up to {far} brings the chance that it {aim} {gain}. It is shown dashed on the drawing.</source>
        <translation>{n} Mechaniken um bis zu {far} versetzt: die Wahrscheinlichkeit, dass sie {aim}, steigt {gain}. In der Zeichnung gestrichelt gezeigt.</translation>
    </message>
    <message>
        <source>Moving {tuner} by {far} brings the chance that it {aim} {gain}. It is shown dashed on the drawing.</source>
        <translation>{tuner} um {far} versetzt: die Wahrscheinlichkeit, dass sie {aim}, steigt {gain}. In der Zeichnung gestrichelt gezeigt.</translation>
    </message>
    <message>
        <source>My own rack</source>
        <translation>Mein eigener Bestand</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>N&amp;ew window</source>
        <translation>Neues Fens&amp;ter</translation>
    </message>
    <message>
        <source>N, Shift+N</source>
        <translation>N, Umschalt+N</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name of the layout</source>
        <translation>Name des Entwurfs</translation>
    </message>
    <message>
        <source>Name the printer: the correction is kept for that one alone.</source>
        <translation>Den Drucker benennen: die Korrektur gilt nur für diesen.</translation>
    </message>
    <message>
        <source>Narrowest: the largest cutter</source>
        <translation>Engste Stelle: größter Fräser</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Nötig</translation>
    </message>
    <message>
        <source>New slot</source>
        <translation>Neuer Schlitz</translation>
    </message>
    <message>
        <source>New: across {across:.3f}, along {along:.3f}.</source>
        <translation>Neu: quer {across:.3f}, längs {along:.3f}.</translation>
    </message>
    <message>
        <source>Newtons on the nut: 10 N is the weight of 1 kg.</source>
        <translation>Newton auf den Sattel: 10 N sind das Gewicht von 1 kg.</translation>
    </message>
    <message>
        <source>Newtons on the nut: what a string presses down with where it bends; 10 N is the weight of 1 kg. Friction is left out.</source>
        <translation>Newton auf den Sattel: womit eine Saite drückt, wo sie abknickt; 10 N sind das Gewicht von 1 kg. Reibung bleibt außer Acht.</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Next &amp;part of the window</source>
        <translation>Nächster &amp;Bereich des Fensters</translation>
    </message>
    <message>
        <source>Next &amp;snag</source>
        <translation>Nächster &amp;Haken</translation>
    </message>
    <message>
        <source>No bit chosen for the template</source>
        <translation>Kein Fräser für die Schablone gewählt</translation>
    </message>
    <message>
        <source>No bit is chosen for the template, so its size is unknown.</source>
        <translation>Für die Schablone ist kein Fräser gewählt, ihr Maß ist unbekannt.</translation>
    </message>
    <message>
        <source>No bit is chosen for the template, so sheets and files carry no template lines.</source>
        <translation>Für die Schablone ist kein Fräser gewählt; Blätter und Dateien enthalten keine Schablonenlinien.</translation>
    </message>
    <message>
        <source>No bit is chosen, so there are no template lines: outline and slots are the finished size. Choose a bit before you cut a template.</source>
        <translation>Es ist kein Fräser gewählt, also gibt es keine Schablonenlinien: Umriss und Schlitze haben Fertigmaß. Vor dem Schneiden einer Schablone einen Fräser wählen.</translation>
    </message>
    <message>
        <source>No bit of the rack can rout the outline.</source>
        <translation>Kein Fräser im Bestand kann den Umriss fräsen.</translation>
    </message>
    <message>
        <source>No bit of the rack can rout {slot}.</source>
        <translation>Kein Fräser im Bestand kann {slot} fräsen.</translation>
    </message>
    <message>
        <source>No bore of the {side} edge meets the square edge of the blank.</source>
        <translation>Keine Bohrung der Kante {side} trifft die gerade Kante des Rohlings.</translation>
    </message>
    <message>
        <source>No brad point or Forstner bit of the rack is slim enough for {slot}: up to {widest} would do.</source>
        <translation>Kein Zentrierspitz- oder Forstnerbohrer im Bestand ist schlank genug für {slot}: bis {widest} ginge.</translation>
    </message>
    <message>
        <source>No clearance came under its margin in any trial.</source>
        <translation>Kein Abstand kam in einem Versuch unter seinen Mindestabstand.</translation>
    </message>
    <message>
        <source>No closed edge runs round this place: press inside the head, and see that all of it is in the picture and differs from what is behind it; or shift the level of grey.</source>
        <translation>Um diese Stelle läuft keine geschlossene Kante: innerhalb der Kopfplatte klicken und prüfen, dass sie ganz im Bild ist und sich vom Hintergrund abhebt; oder den Grauwert verschieben.</translation>
    </message>
    <message>
        <source>No closed loop is the outline: the drawing has none, or its ends do not meet.</source>
        <translation>Keine geschlossene Linie ist der Umriss: die Zeichnung hat keine, oder ihre Enden treffen sich nicht.</translation>
    </message>
    <message>
        <source>No hardware in this layout.</source>
        <translation>In diesem Entwurf sind keine Mechaniken.</translation>
    </message>
    <message>
        <source>No hole for a retainer's screw</source>
        <translation>Keine Bohrung für die Schraube eines Niederhalters</translation>
    </message>
    <message>
        <source>No line of the drawing can be used: draw or export the outline anew. {why}</source>
        <translation>Keine Linie der Zeichnung ist brauchbar: den Umriss neu zeichnen oder ausgeben. {why}</translation>
    </message>
    <message>
        <source>No locating pin stands inside the outline, where a template of the shape of the head can use it.</source>
        <translation>Kein Passstift steht innerhalb des Umrisses, wo ihn eine Schablone in der Form der Kopfplatte nutzen kann.</translation>
    </message>
    <message>
        <source>No loop is the outline yet.</source>
        <translation>Noch ist keine Linie der Umriss.</translation>
    </message>
    <message>
        <source>No mark on the square edge</source>
        <translation>Kein Anriss auf der geraden Kante</translation>
    </message>
    <message>
        <source>No marks.</source>
        <translation>Keine Anrisse.</translation>
    </message>
    <message>
        <source>No move of a tuner that you left free helps.</source>
        <translation>Kein Versetzen einer freigegebenen Mechanik hilft.</translation>
    </message>
    <message>
        <source>No neck was found behind the headstock of the drawing: leave --nut-slant out.</source>
        <translation>Hinter der Kopfplatte der Zeichnung wurde kein Hals gefunden: --nut-slant weglassen.</translation>
    </message>
    <message>
        <source>No neck was found behind the headstock of the drawing: leave --nut-to-tip out.</source>
        <translation>Hinter der Kopfplatte der Zeichnung wurde kein Hals gefunden: --nut-to-tip weglassen.</translation>
    </message>
    <message>
        <source>No order can do with fewer than {bound} changes.</source>
        <translation>Keine Folge kommt mit weniger als {bound} Wechseln aus.</translation>
    </message>
    <message>
        <source>No order of these steps needs fewer changes.</source>
        <translation>Keine Folge dieser Schritte braucht weniger Wechsel.</translation>
    </message>
    <message>
        <source>No order works</source>
        <translation>Keine Folge ist möglich</translation>
    </message>
    <message>
        <source>No order works: {parts}</source>
        <translation>Keine Folge ist möglich: {parts}</translation>
    </message>
    <message>
        <source>No picture lies behind the drawing: lay one there first.</source>
        <translation>Hinter der Zeichnung liegt kein Bild: zuerst eines hinlegen.</translation>
    </message>
    <message>
        <source>No place for a feature</source>
        <translation>Kein Platz für ein Teil</translation>
    </message>
    <message>
        <source>No place on the way of string {string} has wood for a retainer's screw: set a hole where you want one, and say there that it carries a retainer.</source>
        <translation>Auf dem Weg der Saite {string} ist nirgends Holz für die Schraube eines Niederhalters: eine Bohrung setzen, wo einer hinsoll, und dort angeben, dass sie ihn trägt.</translation>
    </message>
    <message>
        <source>No ramp frees the strings of {slot} and leaves enough wood. The best would be {ramp_words}: {snag}</source>
        <translation>Keine Rampe gibt die Saiten von {slot} frei und lässt genug Holz. Die beste wäre {ramp_words}: {snag}</translation>
    </message>
    <message>
        <source>No retainer bends string {string} more over the nut: {height} above the face is as low as one holds it. Lean the head back farther, or let the face lie deeper below the nut.</source>
        <translation>Kein Niederhalter lässt die Saite {string} über dem Sattel stärker abknicken: Tiefer als {height} über der Vorderseite hält keiner sie. Die Kopfplatte weiter nach hinten neigen oder die Vorderseite tiefer unter den Sattel legen.</translation>
    </message>
    <message>
        <source>No router bit does this in one set-up: change the depth, the width or the template.</source>
        <translation>Kein Fräser schafft das in einer Einstellung: Tiefe, Breite oder Schablone ändern.</translation>
    </message>
    <message>
        <source>No single move is known that cures this snag.</source>
        <translation>Kein einzelner Schritt, der bekannt ist, behebt diesen Haken.</translation>
    </message>
    <message>
        <source>No slanted edge was found that could be the nut: it is laid square to the centreline.</source>
        <translation>Es fand sich keine schräge Kante, die der Sattel sein könnte: Er liegt im rechten Winkel zur Mittellinie.</translation>
    </message>
    <message>
        <source>No slot yet: choose New slot, and press where the middle of its round nut end goes.</source>
        <translation>Noch kein Schlitz: „Neuer Schlitz“ wählen und klicken, wohin die Mitte seines runden Sattelendes kommt.</translation>
    </message>
    <message>
        <source>No snags.</source>
        <translation>Keine Haken.</translation>
    </message>
    <message>
        <source>No step is spoiled by where it stands; what is unwise in the order is marked.</source>
        <translation>Kein Schritt wird durch seinen Platz in der Folge verdorben; Unkluges ist gekennzeichnet.</translation>
    </message>
    <message>
        <source>No straight edge at the end could be the nut line: the lowest point and the middle of the outline were taken{turned}.</source>
        <translation>Keine gerade Kante am Ende taugt als Sattellinie: der tiefste Punkt und die Mitte des Umrisses wurden genommen{turned}.</translation>
    </message>
    <message>
        <source>No stretch of the printer shows ({odds} that chance alone does as much).</source>
        <translation>Keine Dehnung des Druckers zu sehen ({odds}, dass allein der Zufall so viel ausmacht).</translation>
    </message>
    <message>
        <source>No string winds on {tuner}.</source>
        <translation>{tuner} hat keine Saite.</translation>
    </message>
    <message>
        <source>No string winds on {tuner}: give it one in the table of strings first.</source>
        <translation>{tuner} hat noch keine Saite: zuerst in der Saitentabelle eine zuordnen.</translation>
    </message>
    <message>
        <source>No such drill in the rack</source>
        <translation>Kein solcher Bohrer im Bestand</translation>
    </message>
    <message>
        <source>No template lines are printed: choose this plan's bit for the template first.</source>
        <translation>Es sind keine Schablonenlinien gedruckt: zuerst den Fräser dieses Plans für die Schablone wählen.</translation>
    </message>
    <message>
        <source>No template lines: {error}</source>
        <translation>Keine Schablonenlinien: {error}</translation>
    </message>
    <message>
        <source>No timer runs.</source>
        <translation>Es läuft keine Uhr.</translation>
    </message>
    <message>
        <source>No tuner can sit there: on its way along the edge it stops at {reached}.</source>
        <translation>Dort kann keine Mechanik sitzen: auf dem Weg an der Kante entlang hält sie bei {reached}.</translation>
    </message>
    <message>
        <source>No tuner yet: choose its hardware over the drawing, then Place, and press where its post goes.</source>
        <translation>Noch keine Mechanik: eine über der Zeichnung wählen, dann „Setzen“, und klicken, wohin ihre Welle kommt.</translation>
    </message>
    <message>
        <source>No two pins find room {where} with {clear} clear of everything and {apart} between them: {cure}.</source>
        <translation>Kein Stiftpaar findet Platz ({where}) mit {clear} Abstand zu allem und {apart} zueinander: {cure}.</translation>
    </message>
    <message>
        <source>No waste holes: {reason}</source>
        <translation>Keine Räumbohrungen: {reason}</translation>
    </message>
    <message>
        <source>No way to serve these posts keeps the strings from crossing: let a held post go, or move one.</source>
        <translation>Keine Zuordnung dieser Wellen hält die Saiten ohne Kreuzung: eine gehaltene Welle freigeben oder eine versetzen.</translation>
    </message>
    <message>
        <source>Node</source>
        <translation>Knoten</translation>
    </message>
    <message>
        <source>Node {node} of the {ref}</source>
        <translation>Knoten {node} ({ref})</translation>
    </message>
    <message>
        <source>Nodes</source>
        <translation>Knoten</translation>
    </message>
    <message>
        <source>Nodes are brought into line along x or y.</source>
        <translation>Knoten werden entlang x oder y ausgerichtet.</translation>
    </message>
    <message>
        <source>None of this moves the slots that are held with them.</source>
        <translation>Nichts davon versetzt die mitgehaltenen Schlitze.</translation>
    </message>
    <message>
        <source>Not all of it is text in UTF-8: some bytes were spoiled or it was saved by something else.</source>
        <translation>Nicht alles ist Text in UTF-8: einige Bytes sind verdorben, oder ein anderes Programm hat gespeichert.</translation>
    </message>
    <message>
        <source>Not in the rack: {missing}.</source>
        <translation>Nicht im Bestand: {missing}.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Not printed</source>
        <translation>Nicht gedruckt</translation>
    </message>
    <message>
        <source>Not saved there</source>
        <translation>Nicht dort gespeichert</translation>
    </message>
    <message>
        <source>Not whole on this paper, for it goes on behind the end of the blank: {pockets}.</source>
        <translation>Nicht ganz auf diesem Bogen, weil es hinter dem Ende des Rohlings weitergeht: {pockets}.</translation>
    </message>
    <message>
        <source>Note in the job &amp;book…</source>
        <translation>No&amp;tiz im Werkbuch…</translation>
    </message>
    <message>
        <source>Note to a step</source>
        <translation>Notiz zu einem Schritt</translation>
    </message>
    <message>
        <source>Note to this step…</source>
        <translation>Notiz zu diesem Schritt…</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation>Vermerkt</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Notes: do this differently</source>
        <translation>Notizen: das anders machen</translation>
    </message>
    <message>
        <source>Nothing can be written in {folder}: {why}.</source>
        <translation>In {folder} kann nichts geschrieben werden: {why}.</translation>
    </message>
    <message>
        <source>Nothing has this in it: try another word.</source>
        <translation>Darin kommt nichts vor: ein anderes Wort versuchen.</translation>
    </message>
    <message>
        <source>Nothing has to be finer: as you work now, the chance that it {aim} is {now}.</source>
        <translation>Nichts muss feiner werden: wie Sie jetzt arbeiten, ist die Wahrscheinlichkeit, dass sie {aim}, {now}.</translation>
    </message>
    <message>
        <source>Nothing in the drawing has a line or a fill; its invisible shapes were taken.</source>
        <translation>Nichts in der Zeichnung hat Linie oder Füllung; die unsichtbaren Formen wurden genommen.</translation>
    </message>
    <message>
        <source>Nothing is held.</source>
        <translation>Nichts wird gehalten.</translation>
    </message>
    <message>
        <source>Nothing is kept for this printer and paper yet.</source>
        <translation>Für diesen Drucker und dieses Papier ist noch nichts gemerkt.</translation>
    </message>
    <message>
        <source>Nothing is straightened: for scans, and for photos taken square from far away. The farther apart the points, the better.</source>
        <translation>Es wird nichts entzerrt: für Scans und für Fotos, die rechtwinklig aus der Ferne aufgenommen sind. Je weiter die Punkte auseinander, desto besser.</translation>
    </message>
    <message>
        <source>Nothing is timed yet: the first entry begins to correct the plan.</source>
        <translation>Noch ist nichts gestoppt: der erste Eintrag beginnt, den Plan zu berichtigen.</translation>
    </message>
    <message>
        <source>Nothing is written down of this piece: it is begun anew as it is.</source>
        <translation>Von diesem Stück ist nichts aufgeschrieben: Es ist so, wie es ist, neu begonnen.</translation>
    </message>
    <message>
        <source>Nothing of it is removed. To go on, open the layout as it was saved last; “Open the version before” in the menu Layout leads one saving further back. If the work matters, copy what is named here to another disk, and see whether this one is sound.</source>
        <translation>Nichts davon wird entfernt. Zum Weiterarbeiten den Entwurf öffnen, wie er zuletzt gespeichert wurde; „Die Fassung davor öffnen“ im Menü Entwurf führt noch ein Speichern zurück. Ist die Arbeit wichtig, das hier Genannte auf eine andere Platte kopieren, und prüfen, ob diese in Ordnung ist.</translation>
    </message>
    <message>
        <source>Nothing of the outline would lie before the nut line.</source>
        <translation>Vor der Sattellinie läge nichts vom Umriss.</translation>
    </message>
    <message>
        <source>Nothing on this shelf yet: add one.</source>
        <translation>In diesem Fach ist noch nichts: etwas hinzufügen.</translation>
    </message>
    <message>
        <source>Nothing strays here.</source>
        <translation>Hier streut nichts.</translation>
    </message>
    <message>
        <source>Nothing to do again</source>
        <translation>Nichts zu wiederholen</translation>
    </message>
    <message>
        <source>Nothing to undo</source>
        <translation>Nichts rückgängig zu machen</translation>
    </message>
    <message>
        <source>Nothing was written since the layout was opened</source>
        <translation>Seit dem Öffnen wurde nichts eingetragen</translation>
    </message>
    <message>
        <source>Nothing would be left of the slot: it is narrower than twice this distance.</source>
        <translation>Vom Schlitz bliebe nichts: er ist schmaler als das Doppelte dieses Abstands.</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Noch nichts</translation>
    </message>
    <message>
        <source>Now the chance that it {aim} is {now}. Even ten times finer work does not reach {wanted}: {what} has to change.</source>
        <translation>Jetzt ist die Wahrscheinlichkeit, dass sie {aim}, {now}. Selbst zehnmal feinere Arbeit erreicht {wanted} nicht: zu ändern ist {what}.</translation>
    </message>
    <message>
        <source>Now the chance that it {aim} is {now}. Hold what follows, all of it and only there, and it is {then}.</source>
        <translation>Jetzt ist die Wahrscheinlichkeit, dass sie {aim}, {now}. Halten Sie ein, was folgt, alles davon und nur dort, dann ist sie {then}.</translation>
    </message>
    <message>
        <source>Now: {words}.</source>
        <translation>Jetzt: {words}.</translation>
    </message>
    <message>
        <source>Nudge</source>
        <translation>Rücken</translation>
    </message>
    <message>
        <source>Nudge the node</source>
        <translation>Den Knoten rücken</translation>
    </message>
    <message>
        <source>Nudge what is held by 1 mm; with Shift 10, with Alt 0.1</source>
        <translation>Das Gehaltene um 1 mm rücken; mit Umschalt 10, mit Alt 0,1</translation>
    </message>
    <message>
        <source>Nudge {n} nodes</source>
        <translation>{n} Knoten rücken</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Numbers can be typed, Tab leads from one to the next. The keys S, A, T and C choose a straight edge, an arc, one that goes on without a corner, and a curve: pull before letting go to bend it. Backspace takes the last node back.</source>
        <translation>Zahlen lassen sich eingeben, Tab führt von einer zur nächsten. Die Tasten S, A, T und C wählen eine gerade Kante, einen Bogen, einen, der ohne Ecke weiterführt, und eine Kurve: vor dem Loslassen ziehen, um sie zu biegen. Die Rücktaste nimmt den letzten Knoten zurück.</translation>
    </message>
    <message>
        <source>Nut and blank stay, as every layout has them: change their numbers instead.</source>
        <translation>Sattel und Rohling bleiben, denn jeder Entwurf hat sie: stattdessen ihre Zahlen ändern.</translation>
    </message>
    <message>
        <source>Nut and strings</source>
        <translation>Sattel und Saiten</translation>
    </message>
    <message>
        <source>Nut end, across</source>
        <translation>Sattelende, quer</translation>
    </message>
    <message>
        <source>Nut end, along</source>
        <translation>Sattelende, längs</translation>
    </message>
    <message>
        <source>Nut line</source>
        <translation>Sattellinie</translation>
    </message>
    <message>
        <source>Nut line to tip</source>
        <translation>Sattellinie bis Spitze</translation>
    </message>
    <message>
        <source>Octave mandolin</source>
        <translation>Oktavmandoline</translation>
    </message>
    <message>
        <source>Of a loose tuner measure from its plate: the thickness of the head then takes from what stands out. Of one that is fitted measure from the face.</source>
        <translation>Bei einer losen Mechanik ab ihrer Platte messen: Die Dicke der Kopfplatte geht dann von dem ab, was heraussteht. Bei einer eingebauten ab der Vorderseite messen.</translation>
    </message>
    <message>
        <source>Of a slanted nut: the line through its middle that is square to the centreline. Papers show it dashed, square it on the wood: everything along the head is measured from it.</source>
        <translation>Bei schrägem Sattel: die Linie durch seine Mitte im rechten Winkel zur Mittellinie. Die Bögen zeigen sie gestrichelt, winkeln Sie sie auf dem Holz an: Alles längs der Kopfplatte wird von ihr gemessen.</translation>
    </message>
    <message>
        <source>Of the arc from this node to the next; both nodes stay.</source>
        <translation>Des Bogens von diesem Knoten zum nächsten; beide Knoten bleiben.</translation>
    </message>
    <message>
        <source>Of the board: the follower has to reach it at every depth.</source>
        <translation>Des Bretts: die Führung muss es in jeder Tiefe erreichen.</translation>
    </message>
    <message>
        <source>Of the cone at the tip, edge to edge; 118 degrees is usual.</source>
        <translation>Des Kegels an der Spitze, von Schneide zu Schneide; üblich sind 118 Grad.</translation>
    </message>
    <message>
        <source>Of the cutting edges, measured with a caliper across their tips.</source>
        <translation>Der Schneiden, mit dem Messschieber über ihre Spitzen gemessen.</translation>
    </message>
    <message>
        <source>Of the drill that makes it.</source>
        <translation>Des Bohrers, der sie macht.</translation>
    </message>
    <message>
        <source>Of the drill. Measure the part with a caliper and add what it needs to slide in.</source>
        <translation>Des Bohrers. Das Teil mit dem Messschieber messen und zugeben, was es zum Hineingleiten braucht.</translation>
    </message>
    <message>
        <source>Of the edge from this node to the next; the next node moves.</source>
        <translation>Der Kante von diesem Knoten zum nächsten; der nächste wandert.</translation>
    </message>
    <message>
        <source>Of the edges along the axis.</source>
        <translation>Der Schneiden entlang der Achse.</translation>
    </message>
    <message>
        <source>Of the head plate glued on the face: part of the thickness above. Nothing for none.</source>
        <translation>Auf die Vorderseite geleimt: ein Teil der Dicke darüber. Nichts, wenn keines da ist.</translation>
    </message>
    <message>
        <source>Of the nut itself, edge to edge.</source>
        <translation>Des Sattels selbst, von Kante zu Kante.</translation>
    </message>
    <message>
        <source>Of the part that rubs on the template.</source>
        <translation>Des Teils, der an der Schablone anliegt.</translation>
    </message>
    <message>
        <source>Of the pin itself: it has to fit without play.</source>
        <translation>Des Stifts selbst: er muss ohne Spiel passen.</translation>
    </message>
    <message>
        <source>Of the plate that rests on the work or the template.</source>
        <translation>Der Platte, die auf Werkstück oder Schablone steht.</translation>
    </message>
    <message>
        <source>Of the ring that rubs on the template.</source>
        <translation>Des Rings, der an der Schablone anliegt.</translation>
    </message>
    <message>
        <source>Of the strings of {id} these run into its wall beside the nut end, where no ramp helps: {strings}. Give them posts more in line with their places at the nut, or make the slot wider.</source>
        <translation>Von den Saiten in {id} laufen diese neben dem Sattelende in die Wand, wo keine Rampe hilft: {strings}. Ihnen Wellen geben, die eher in der Flucht ihrer Plätze am Sattel liegen, oder den Schlitz breiter machen.</translation>
    </message>
    <message>
        <source>Of the veneer glued on the back: part of the thickness above. Nothing for none.</source>
        <translation>Auf die Rückseite geleimt: ein Teil der Dicke darüber. Nichts, wenn keines da ist.</translation>
    </message>
    <message>
        <source>Of this string alone, where frets are fanned; left empty it is the one of all.</source>
        <translation>Nur dieser Saite, bei gefächerten Bünden; leer ist es die aller.</translation>
    </message>
    <message>
        <source>Of {n} moves of one part that were tried, up to {far} mm, none does it.</source>
        <translation>Von {n} versuchten Schritten mit einem Teil, bis {far} mm, genügt keiner.</translation>
    </message>
    <message>
        <source>Of {n} moves that were tried none does it.</source>
        <translation>Von {n} versuchten Schritten genügt keiner.</translation>
    </message>
    <message>
        <source>Of {slots} some are there already and some are to be routed: they do not make one slot.</source>
        <translation>Von {slots} sind einige schon da und andere noch zu fräsen: Daraus wird kein gemeinsamer Schlitz.</translation>
    </message>
    <message>
        <source>Of {trials:,} headstocks built as true as your shop works. Sound: no wood is broken through that costs the piece: {sound}. Every margin kept: {within}. {model}</source>
        <translation>Von {trials:,} Kopfplatten, so genau gebaut, wie Ihre Werkstatt arbeitet. Gelungen: kein Durchbruch, der das Stück kostet: {sound}. Alle Mindestabstände gehalten: {within}. {model}</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Versatz</translation>
    </message>
    <message>
        <source>Offset copy</source>
        <translation>Versetzte Kopie</translation>
    </message>
    <message>
        <source>Offset of the outline</source>
        <translation>Versatz des Umrisses</translation>
    </message>
    <message>
        <source>Offset of {slot}</source>
        <translation>Versatz von {slot}</translation>
    </message>
    <message>
        <source>On its way from the square edge the {bore} goes through wood of the head.</source>
        <translation>Auf dem Weg von der geraden Kante geht {bore} durch Holz der Kopfplatte.</translation>
    </message>
    <message>
        <source>On its way through the waste the {bore} cuts {measured} mm into the hole of {other}.</source>
        <translation>Auf dem Weg durch den Abfall schneidet {bore} {measured} mm in die Bohrung von {other}.</translation>
    </message>
    <message>
        <source>On its way through the waste the {bore} cuts {measured} mm into {other}, which is there already.</source>
        <translation>Auf dem Weg durch den Abfall schneidet {bore} {measured} mm in {other}: diese Bohrung ist schon da.</translation>
    </message>
    <message>
        <source>On its way through the waste the {bore} passes {a} mm from the hole of {other}; {b} mm wanted.</source>
        <translation>Auf dem Weg durch den Abfall führt {bore} in {a} mm Abstand an der Bohrung von {other} vorbei; gewünscht sind {b} mm.</translation>
    </message>
    <message>
        <source>On its way through the waste the {bore} passes {a} mm from {other}, which is there already; {b} mm wanted.</source>
        <translation>Auf dem Weg durch den Abfall führt {bore} in {a} mm Abstand an {other} vorbei: diese Bohrung ist schon da; gewünscht sind {b} mm.</translation>
    </message>
    <message>
        <source>On macOS the bundled program brings its launcher and opens layouts itself; see DEVELOPERS.md for how it is made.</source>
        <translation>Auf macOS bringt das gebündelte Programm seinen Starter mit und öffnet Entwürfe selbst; wie es gemacht wird, steht in DEVELOPERS.md.</translation>
    </message>
    <message>
        <source>On the drawing: hold the next thing, the thing before</source>
        <translation>In der Zeichnung: das nächste Teil, das Teil davor halten</translation>
    </message>
    <message>
        <source>On the same template {names} does it.</source>
        <translation>Mit derselben Schablone geht es mit {names}.</translation>
    </message>
    <message>
        <source>Once the outline is cut there is no square edge left: nothing for the vice to hold, and the mark is gone with the waste.</source>
        <translation>Ist der Umriss geschnitten, gibt es keine gerade Kante mehr: der Schraubstock hat nichts zu halten, und der Anriss ist mit dem Abfall fort.</translation>
    </message>
    <message>
        <source>One alone would do as well: {ways}.</source>
        <translation>Eines allein täte es auch: {ways}.</translation>
    </message>
    <message>
        <source>One name for one thing; cards, notes and the running order use it.</source>
        <translation>Ein Name für ein Ding; Karten, Notizen und Arbeitsfolge verwenden ihn.</translation>
    </message>
    <message>
        <source>One pin does not hold the template from turning: add another, so that it comes back to the same place from the other side.</source>
        <translation>Ein Passstift allein hält die Schablone nicht gegen Verdrehen: einen zweiten hinzufügen, damit sie von der anderen Seite an dieselbe Stelle zurückkehrt.</translation>
    </message>
    <message>
        <source>One reading is so far off that a slip of the pen is likelier; left out below: {which}.</source>
        <translation>Ein Messwert weicht so weit ab, dass ein Schreibfehler näherliegt; unten ausgelassen: {which}.</translation>
    </message>
    <message>
        <source>One round of the router at one depth.</source>
        <translation>Eine Runde der Oberfräse in einer Tiefe.</translation>
    </message>
    <message>
        <source>One that the blank has already, under the nut. Its first measures are common practice, no source: measure yours and type them.</source>
        <translation>Eine, die der Rohling unter dem Sattel schon hat. Ihre ersten Maße sind übliche Praxis, ohne Quelle: Messen Sie Ihre und tragen Sie sie ein.</translation>
    </message>
    <message>
        <source>One that the blank has already: everything keeps clear of it.</source>
        <translation>Eine, die der Rohling schon hat: Alles hält Abstand von ihr.</translation>
    </message>
    <message>
        <source>One unit of the drawing is</source>
        <translation>Eine Einheit der Zeichnung ist</translation>
    </message>
    <message>
        <source>Only a closed path can become a loop.</source>
        <translation>Nur ein geschlossener Pfad kann eine geschlossene Linie werden.</translation>
    </message>
    <message>
        <source>Only after</source>
        <translation>Erst nach</translation>
    </message>
    <message>
        <source>Only as it came from the scanner: cut it, but do not let it be made larger or smaller. Then check a length that you know with Measure.</source>
        <translation>Nur so, wie der Scanner ihn liefert: Zuschneiden schadet nicht, vergrößert oder verkleinert darf er nicht sein. Danach eine bekannte Länge mit „Messen“ prüfen.</translation>
    </message>
    <message>
        <source>Only one locating pin stands inside the outline, where a template of the shape of the head can use it.</source>
        <translation>Nur ein Passstift steht innerhalb des Umrisses, wo ihn eine Schablone in der Form der Kopfplatte nutzen kann.</translation>
    </message>
    <message>
        <source>Only the &amp;headstock of this neck</source>
        <translation>Nur die &amp;Kopfplatte dieses Halses</translation>
    </message>
    <message>
        <source>Only {length} of {bush} stands out of the base, and {contact} have to rub on the template: take a longer bush.</source>
        <translation>Nur {length} von {bush} stehen aus der Fußplatte vor, und {contact} müssen an der Schablone anliegen: eine längere Kopierhülse nehmen.</translation>
    </message>
    <message>
        <source>Only {most} fits, because an edge beside this corner is no more than {length} long, as a gap that was closed leaves it: remove the node at its other end, then round the corner.</source>
        <translation>Es passen nur {most}, weil eine Kante neben dieser Ecke nicht länger als {length} ist, wie eine geschlossene Lücke sie hinterlässt: den Knoten an ihrem anderen Ende entfernen, dann die Ecke runden.</translation>
    </message>
    <message>
        <source>Only {rubs} of its bearing would rub on the template below, and {contact} are wanted: take a thicker template or a bit with a higher bearing.</source>
        <translation>Nur {rubs} seines Anlaufrings lägen an der Schablone darunter an, {contact} gewünscht: eine dickere Schablone oder einen Fräser mit höherem Ring nehmen.</translation>
    </message>
    <message>
        <source>Only {wide} of template is left between {id} and {beside} at {place}, {needed} are wanted: choose a follower nearer to the size of the cutter, or back the template with a second board.</source>
        <translation>Zwischen {id} und {beside} bleiben nur {wide} Schablone ({place}), {needed} gewünscht: eine Führung näher am Fräsermaß wählen oder die Schablone mit einem zweiten Brett verstärken.</translation>
    </message>
    <message>
        <source>Only {wood} of template is left beside {pin}, {needed} are wanted: move the pin.</source>
        <translation>Neben {pin} bleiben nur {wood} Schablone, {needed} gewünscht: den Stift versetzen.</translation>
    </message>
    <message>
        <source>Open a layout</source>
        <translation>Einen Entwurf öffnen</translation>
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
        <translation>Einen Entwurf öffnen.</translation>
    </message>
    <message>
        <source>Open a layout…</source>
        <translation>Einen Entwurf öffnen…</translation>
    </message>
    <message>
        <source>Open in a new win&amp;dow…</source>
        <translation>&amp;In neuem Fenster öffnen…</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open the version &amp;before</source>
        <translation>Die Fassung da&amp;vor öffnen</translation>
    </message>
    <message>
        <source>Open the version before</source>
        <translation>Die Fassung davor öffnen</translation>
    </message>
    <message>
        <source>Opened &amp;lately</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Opened from: {path}</source>
        <translation>Geöffnet aus: {path}</translation>
    </message>
    <message>
        <source>Opened from: {path} – not there now</source>
        <translation>Geöffnet aus: {path} – jetzt nicht da</translation>
    </message>
    <message>
        <source>Opened lately</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Opened-out view</source>
        <translation>Abwicklung</translation>
    </message>
    <message>
        <source>Openings for tuners through the side.</source>
        <translation>Öffnungen für Mechaniken durch die Seite.</translation>
    </message>
    <message>
        <source>Opposite bores need one table setting; the blank is turned over.</source>
        <translation>Gegenüberliegende Bohrungen brauchen eine Tischeinstellung; der Rohling wird gewendet.</translation>
    </message>
    <message>
        <source>Or tick its step again: at once if it came out as the drawing has it now, else when it is plugged and drilled anew.</source>
        <translation>Oder den Schritt noch einmal abhaken: sofort, wenn das Loch so ausgefallen ist, wie die Zeichnung es jetzt hat, sonst, wenn es verschlossen und neu gebohrt ist.</translation>
    </message>
    <message>
        <source>Or tick its steps again: at once if it came out as the drawing has it now, else when wood is glued on and it is cut anew.</source>
        <translation>Oder die Schritte noch einmal abhaken: sofort, wenn die Form so ausgefallen ist, wie die Zeichnung sie jetzt hat, sonst, wenn Holz angeleimt und sie neu ausgearbeitet ist.</translation>
    </message>
    <message>
        <source>Or tick its steps again: at once if it came out as the drawing has it now, else when wood is let in and it is cut anew.</source>
        <translation>Oder die Schritte noch einmal abhaken: sofort, wenn die Form so ausgefallen ist, wie die Zeichnung sie jetzt hat, sonst, wenn Holz eingesetzt und sie neu ausgearbeitet ist.</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Folge</translation>
    </message>
    <message>
        <source>Other bit</source>
        <translation>Anderes Werkzeug</translation>
    </message>
    <message>
        <source>Other machine</source>
        <translation>Andere Maschine</translation>
    </message>
    <message>
        <source>Other side</source>
        <translation>Andere Seite</translation>
    </message>
    <message>
        <source>Out, to the button</source>
        <translation>Hinaus, zum Flügel</translation>
    </message>
    <message>
        <source>Outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <source>Outline crosses itself</source>
        <translation>Umriss kreuzt sich selbst</translation>
    </message>
    <message>
        <source>Outline leaves the blank</source>
        <translation>Umriss verlässt den Rohling</translation>
    </message>
    <message>
        <source>Outline to blank edge</source>
        <translation>Umriss zu Rohlingskante</translation>
    </message>
    <message>
        <source>Outline {width:.2f} x {height:.2f} mm; one unit of the drawing is {mm:.5g} mm, {source}.</source>
        <translation>Umriss {width:.2f} x {height:.2f} mm; eine Einheit der Zeichnung ist {mm:.5g} mm, {source}.</translation>
    </message>
    <message>
        <source>Outline {width:.2f} x {height:.2f} mm; one unit of the drawing is {one}, {source}.</source>
        <translation>Umriss {width:.2f} x {height:.2f} mm; eine Einheit der Zeichnung ist {one}, {source}.</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Außen</translation>
    </message>
    <message>
        <source>Outside a template feed counter-clockwise, seen from above: against the turning of the cutter. Never climb-cut.</source>
        <translation>Außen an der Schablone von oben gesehen gegen den Uhrzeigersinn führen: gegen die Drehung des Fräsers. Nie im Gleichlauf.</translation>
    </message>
    <message>
        <source>Outside diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>Outside, windings included.</source>
        <translation>Außen, Umspinnung eingeschlossen.</translation>
    </message>
    <message>
        <source>Over an open bore the point of the {bit} finds no wood: it wanders and tears the rim.</source>
        <translation>Über einer offenen Bohrung findet die Spitze kein Holz ({bit}): sie verläuft und reißt den Rand aus.</translation>
    </message>
    <message>
        <source>Over the open hole of {pin} the point of the {bit} finds no wood.</source>
        <translation>Über dem offenen Loch von {pin} findet die Spitze kein Holz ({bit}).</translation>
    </message>
    <message>
        <source>Over {slot} at {at} the router's base of {base} stands only {inside} inside its support: fit a wider base, or cut the template from a larger board.</source>
        <translation>Über {slot} ({at}) steht die Fußplatte von {base} nur {inside} weit auf: eine breitere Fußplatte montieren oder die Schablone aus einem größeren Brett schneiden.</translation>
    </message>
    <message>
        <source>Over {slot} at {at} the router's base of {base} tips into the opening: fit a wider base, or cut the template from a larger board.</source>
        <translation>Über {slot} ({at}) kippt die Fußplatte von {base} in die Öffnung: eine breitere Fußplatte montieren oder die Schablone aus einem größeren Brett schneiden.</translation>
    </message>
    <message>
        <source>Page Up, Page Down, on a picture</source>
        <translation>Bild auf, Bild ab, auf einem Bild</translation>
    </message>
    <message>
        <source>Page as it will be printed</source>
        <translation>Die Seite, wie sie gedruckt wird</translation>
    </message>
    <message>
        <source>Page {number} of {pages}</source>
        <translation>Seite {number} von {pages}</translation>
    </message>
    <message>
        <source>Page {number}: {title}</source>
        <translation>Seite {number}: {title}</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Pan</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Panel &amp;wider</source>
        <translation>Tafel b&amp;reiter</translation>
    </message>
    <message>
        <source>Panel na&amp;rrower</source>
        <translation>Tafel &amp;schmaler</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Paper does not stretch by {value:g} %: measure the 100 mm bars and enter up to 5 %.</source>
        <translation>Papier dehnt sich nicht um {value:g} %: die 100-mm-Balken messen und höchstens 5 % eintragen.</translation>
    </message>
    <message>
        <source>Papers at full size, to print and glue on.</source>
        <translation>Papiere in voller Größe, zum Drucken und Aufkleben.</translation>
    </message>
    <message>
        <source>Pare by hand at {at}: {depth} deep, {size} of wood.</source>
        <translation>Von Hand nachstechen bei {at}: {depth} tief, {size} Holz.</translation>
    </message>
    <message>
        <source>Pare by hand at {at}: {depth} deep.</source>
        <translation>Von Hand nachstechen bei {at}: {depth} tief.</translation>
    </message>
    <message>
        <source>Pare it by hand, or choose a slimmer bit.</source>
        <translation>Von Hand nachstechen oder einen schlankeren Fräser wählen.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Part be&amp;fore</source>
        <translation>B&amp;ereich davor</translation>
    </message>
    <message>
        <source>Part list</source>
        <translation>Teileliste</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Pass {at} of {pictures}</source>
        <translation>Durchgang {at} von {pictures}</translation>
    </message>
    <message>
        <source>Paste new papers, or mark by hand what lies elsewhere, and tick their step again; or put the drawing back.</source>
        <translation>Neue Bögen aufkleben oder von Hand anzeichnen, was woanders liegt, und ihren Schritt noch einmal abhaken; oder die Zeichnung zurückstellen.</translation>
    </message>
    <message>
        <source>Paste papers and prick</source>
        <translation>Papiere kleben und ankörnen</translation>
    </message>
    <message>
        <source>Paste the papers and prick the centres</source>
        <translation>Papiere aufkleben und Mitten ankörnen</translation>
    </message>
    <message>
        <source>Paste the wrap paper round face and both square edges{back}, check it with a rule, and prick every centre.</source>
        <translation>Den Hüllbogen um Vorderseite und beide gerade Kanten kleben{back}, mit dem Maßstab prüfen und jede Mitte ankörnen.</translation>
    </message>
    <message>
        <source>Paste {name}</source>
        <translation>{name} einfügen</translation>
    </message>
    <message>
        <source>Paste {n} things</source>
        <translation>{n} Teile einfügen</translation>
    </message>
    <message>
        <source>Pattern {pattern} has a bore from the side without a depth.</source>
        <translation>Bohrbild {pattern} hat eine seitliche Bohrung ohne Tiefe.</translation>
    </message>
    <message>
        <source>Pattern {pattern} has a bore that is reamed to less than it is drilled.</source>
        <translation>Bohrbild {pattern} hat eine Bohrung, die enger aufgerieben als gebohrt wird.</translation>
    </message>
    <message>
        <source>Pattern {pattern} mounts through the face, so its bores start at the face or the back, not at a seat.</source>
        <translation>Bohrbild {pattern} sitzt in der Vorderseite, seine Bohrungen beginnen vorn oder hinten, nicht an einem Sitz.</translation>
    </message>
    <message>
        <source>Pattern {pattern} mounts through the side, so its bores start at the seat, not at the {surface}.</source>
        <translation>Bohrbild {pattern} sitzt in der Seite, seine Bohrungen beginnen am Sitz, nicht an der {surface}.</translation>
    </message>
    <message>
        <source>Pegwright has written this drawing: outline, slots, holes and what is there already are taken from it, and no other line.</source>
        <translation>Diese Zeichnung hat Pegwright geschrieben: Umriss, Schlitze, Bohrungen und was schon da ist werden daraus übernommen, sonst keine Linie.</translation>
    </message>
    <message>
        <source>Pegwright plans; it does not make a machine safe. The machine's manual, the rules where you work and qualified instruction come first.</source>
        <translation>Pegwright plant; es macht keine Maschine sicher. Die Anleitung der Maschine, die Vorschriften an Ihrem Ort und fachkundige Unterweisung gehen vor.</translation>
    </message>
    <message>
        <source>Pegwright speaks the chosen language when it is started again.</source>
        <translation>Pegwright spricht die gewählte Sprache ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.tif *.tiff *.bmp *.webp *.gif)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.tif *.tiff *.bmp *.webp *.gif)</translation>
    </message>
    <message>
        <source>Pictures of the stages: step {step} of {steps}</source>
        <translation>Bilder der Stufen: Schritt {step} von {steps}</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Piece turned</source>
        <translation>Stück gewendet</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>Stift</translation>
    </message>
    <message>
        <source>Pin holes are drilled through template and blank together: drilled apart they never quite meet.</source>
        <translation>Stiftlöcher werden gemeinsam durch Schablone und Rohling gebohrt: getrennt gebohrt passen sie nie ganz.</translation>
    </message>
    <message>
        <source>Pin to anything</source>
        <translation>Stift zu allem</translation>
    </message>
    <message>
        <source>Pins not mirrored for a template that turns over</source>
        <translation>Stifte nicht gespiegelt für eine gewendete Schablone</translation>
    </message>
    <message>
        <source>Pitch of the head</source>
        <translation>Kopfwinkel</translation>
    </message>
    <message>
        <source>Pitch of the head, slant of the nut</source>
        <translation>Kopfwinkel, Schräge des Sattels</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Setzen</translation>
    </message>
    <message>
        <source>Place a hole that belongs to no tuner.</source>
        <translation>Eine Bohrung setzen, die zu keiner Mechanik gehört.</translation>
    </message>
    <message>
        <source>Place a locating pin.</source>
        <translation>Einen Passstift setzen.</translation>
    </message>
    <message>
        <source>Place hardware; every hole follows from it.</source>
        <translation>Mechaniken setzen; jede Bohrung ergibt sich daraus.</translation>
    </message>
    <message>
        <source>Places are along the edge at the neck. The strings cross the nut {angle} off square, as drawn; the air between them is measured square to them.</source>
        <translation>Die Orte gelten an der Kante zum Hals. Die Saiten kreuzen den Sattel um {angle} schräg, wie gezeichnet; die Luft zwischen ihnen ist quer zu ihnen gemessen.</translation>
    </message>
    <message>
        <source>Places for pins are found, but you went on to something else: ask again.</source>
        <translation>Stellen für Stifte sind gefunden, aber inzwischen ist etwas anderes begonnen: noch einmal fragen.</translation>
    </message>
    <message>
        <source>Plain post bore without a bushing, small open gear, one screw in line with the button.</source>
        <translation>Einfache Wellenbohrung ohne Buchse, kleines offenes Getriebe, eine Schraube in Richtung des Flügels.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Plan for those entries</source>
        <translation>Plan für diese Einträge</translation>
    </message>
    <message>
        <source>Plan the holes, slots and templates of a guitar headstock</source>
        <translation>Bohrungen, Schlitze und Schablonen einer Kopfplatte planen</translation>
    </message>
    <message>
        <source>Plane the head to {before}, its back flat. Glue the back veneer, {veneer} thick, over it from the nut line to the tip, under a flat board, and leave it in the clamps until the glue is hard. The head is {after} thick then: measure it.</source>
        <translation>Die Kopfplatte auf {before} hobeln, die Rückseite eben. Das Rückenfurnier, {veneer} dick, von der Sattellinie bis zur Spitze unter einem ebenen Brett aufleimen und in den Zwingen lassen, bis der Leim hart ist. Die Kopfplatte ist dann {after} dick: nachmessen.</translation>
    </message>
    <message>
        <source>Plane the head to {before}, its face flat. Glue the face veneer, {veneer} thick, over it from the nut line to the tip, under a flat board, and leave it in the clamps until the glue is hard. The head is {after} thick then: measure it.</source>
        <translation>Die Kopfplatte auf {before} hobeln, die Vorderseite eben. Das Deckfurnier, {veneer} dick, von der Sattellinie bis zur Spitze unter einem ebenen Brett aufleimen und in den Zwingen lassen, bis der Leim hart ist. Die Kopfplatte ist dann {after} dick: nachmessen.</translation>
    </message>
    <message>
        <source>Planed to before the veneers</source>
        <translation>Gehobelt auf, vor den Furnieren</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Planned, min</source>
        <translation>Plan, min</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Wird geplant…</translation>
    </message>
    <message>
        <source>Plans the holes, slots and templates of a guitar headstock, for makers in small shops.</source>
        <translation>Plant Bohrungen, Schlitze und Schablonen einer Kopfplatte, für Gitarrenbauer in kleinen Werkstätten.</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>Plate inside the edge</source>
        <translation>Platte innerhalb der Kante</translation>
    </message>
    <message>
        <source>Plate on the curve</source>
        <translation>Platte auf der Kurve</translation>
    </message>
    <message>
        <source>Plate over a neighbour's flat</source>
        <translation>Platte über der Fläche daneben</translation>
    </message>
    <message>
        <source>Plate over a slot</source>
        <translation>Platte über einem Schlitz</translation>
    </message>
    <message>
        <source>Plate overhangs</source>
        <translation>Platte steht über</translation>
    </message>
    <message>
        <source>Plate rocks</source>
        <translation>Platte kippelt</translation>
    </message>
    <message>
        <source>Plate to plate</source>
        <translation>Platte zu Platte</translation>
    </message>
    <message>
        <source>Plates too close</source>
        <translation>Platten zu nah</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Plug an old hole</source>
        <translation>Ein altes Loch verschließen</translation>
    </message>
    <message>
        <source>Plug it now and tick the step again; or put the drawing back.</source>
        <translation>Jetzt verschließen und den Schritt noch einmal abhaken; oder die Zeichnung zurückstellen.</translation>
    </message>
    <message>
        <source>Plug the first of the two in the waste before the other is drilled, or move the two farther apart.</source>
        <translation>Die erste der beiden im Abfall zustopfen, bevor die andere gebohrt wird, oder die beiden weiter auseinander rücken.</translation>
    </message>
    <message>
        <source>Plug the old holes</source>
        <translation>Die alten Löcher verschließen</translation>
    </message>
    <message>
        <source>Plunge</source>
        <translation>Hub</translation>
    </message>
    <message>
        <source>Pocket</source>
        <translation>Tasche</translation>
    </message>
    <message>
        <source>Pocket, {id}</source>
        <translation>Tasche, {id}</translation>
    </message>
    <message>
        <source>Pockets that are there: {pockets}. Holes that are there: {holes}.</source>
        <translation>Vorhandene Taschen: {pockets}. Vorhandene Bohrungen: {holes}.</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Point ahead of the rim</source>
        <translation>Spitze vor dem Rand</translation>
    </message>
    <message>
        <source>Point angle</source>
        <translation>Spitzenwinkel</translation>
    </message>
    <message>
        <source>Point counted with</source>
        <translation>Spitze gerechnet mit</translation>
    </message>
    <message>
        <source>Point its buttons square to the row</source>
        <translation>Flügel rechtwinklig zur Reihe stellen</translation>
    </message>
    <message>
        <source>Point to where the arc should end, away from its centre.</source>
        <translation>Dorthin zeigen, wo der Bogen enden soll, weg von seiner Mitte.</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Post</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>Post bore</source>
        <translation>Wellenbohrung</translation>
    </message>
    <message>
        <source>Post bore does not come through</source>
        <translation>Wellenbohrung geht nicht durch</translation>
    </message>
    <message>
        <source>Post close to the slot's end</source>
        <translation>Welle nahe am Schlitzende</translation>
    </message>
    <message>
        <source>Post does not come out of the face</source>
        <translation>Welle kommt nicht aus der Vorderseite</translation>
    </message>
    <message>
        <source>Post end close to the inner wall</source>
        <translation>Wellenende nahe an der Innenwand</translation>
    </message>
    <message>
        <source>Post end to inner wall</source>
        <translation>Wellenende zu Innenwand</translation>
    </message>
    <message>
        <source>Post is longer than its bore</source>
        <translation>Welle länger als ihre Bohrung</translation>
    </message>
    <message>
        <source>Post of string {string}</source>
        <translation>Welle von Saite {string}</translation>
    </message>
    <message>
        <source>Post through the face in a pressed bushing, body on the back, a screw to either side along the edge.</source>
        <translation>Welle durch die Vorderseite in eingepresster Buchse, Gehäuse auf der Rückseite, je eine Schraube zu beiden Seiten entlang der Kante.</translation>
    </message>
    <message>
        <source>Posts meet</source>
        <translation>Wellen treffen aufeinander</translation>
    </message>
    <message>
        <source>Posts that turn in one slot need air between them.</source>
        <translation>Wellen, die sich in einem Schlitz drehen, brauchen Luft zwischen sich.</translation>
    </message>
    <message>
        <source>Practice</source>
        <comment>head of a column</comment>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Practice piece</source>
        <translation>Probestück</translation>
    </message>
    <message>
        <source>Practice piece, real piece</source>
        <translation>Probestück, echtes Stück</translation>
    </message>
    <message>
        <source>Press inside the head. The largest closed edge round that place is followed; corners stay corners, and the neck is cut off at the nut line.</source>
        <translation>In die Kopfplatte klicken. Der größten geschlossenen Kante um diese Stelle wird gefolgt; Ecken bleiben Ecken, und der Hals wird an der Sattellinie abgeschnitten.</translation>
    </message>
    <message>
        <source>Press on a post to lead its string past its other side.</source>
        <translation>Eine Welle anklicken, um ihre Saite an der anderen Seite vorbeizuführen.</translation>
    </message>
    <message>
        <source>Press on a post to lead its string past the other side of it.</source>
        <translation>Eine Welle anklicken, um ihre Saite an der anderen Seite vorbeizuführen.</translation>
    </message>
    <message>
        <source>Press on a thing to hold it, drag it to move it. Shift keeps one axis, Alt lets go of snapping.</source>
        <translation>Ein Teil anklicken, um es zu halten; ziehen, um es zu versetzen. Umschalt behält eine Richtung bei, Alt fängt nicht.</translation>
    </message>
    <message>
        <source>Press on one thing, then on another: how far they are apart, bores from middle to middle.</source>
        <translation>Erst das eine anklicken, dann das andere: wie weit sie auseinanderliegen, Bohrungen von Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>Press where the middle of its round nut end goes, then that of the tip end.</source>
        <translation>Klicken, wohin die Mitte seines runden Sattelendes kommt, dann die des Spitzenendes.</translation>
    </message>
    <message>
        <source>Press where the outline leaves the nut line, then for each node up to the centreline: the other side follows.</source>
        <translation>Klicken, wo der Umriss die Sattellinie verlässt, dann für jeden Knoten bis zur Mittellinie: die andere Seite folgt.</translation>
    </message>
    <message>
        <source>Press where the post of the hardware chosen goes; a side tuner keeps to the edge.</source>
        <translation>Klicken, wohin die Welle der gewählten Mechanik kommt; eine Seitenmechanik hält sich an die Kante.</translation>
    </message>
    <message>
        <source>Preview of the drawing</source>
        <translation>Vorschau der Zeichnung</translation>
    </message>
    <message>
        <source>Preview of the headstock</source>
        <translation>Vorschau der Kopfplatte</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Print at 100 %, corrected for the printer.</source>
        <translation>Mit 100 % drucken, für den Drucker korrigiert.</translation>
    </message>
    <message>
        <source>Print at 100 %. Measure the 100 mm bars before you glue.</source>
        <translation>Mit 100 % drucken. Die 100-mm-Balken messen, bevor Sie kleben.</translation>
    </message>
    <message>
        <source>Print at 100 %. Measure the bar before you glue.</source>
        <translation>Mit 100 % drucken, vor dem Kleben nachmessen.</translation>
    </message>
    <message>
        <source>Print every page at 100 %, never fitted to the page.</source>
        <translation>Jede Seite mit 100 % drucken, nie an die Seite angepasst.</translation>
    </message>
    <message>
        <source>Print the cover, measure both bars from end tick to end tick as exactly as you can, best with calipers, and enter what you find. Only printed pages are corrected, never drawings.</source>
        <translation>Das Deckblatt drucken, beide Balken von Endstrich zu Endstrich so genau wie möglich messen, am besten mit dem Messschieber, und eintragen. Korrigiert werden nur gedruckte Seiten, nie Zeichnungen.</translation>
    </message>
    <message>
        <source>Print uncorrected</source>
        <translation>Unkorrigiert drucken</translation>
    </message>
    <message>
        <source>Print without a correction?</source>
        <translation>Ohne Korrektur drucken?</translation>
    </message>
    <message>
        <source>Printed as the back is seen and glued there: it marks what is drilled from the back. Full circles are drilled from its side, dashed ones come through from the face.</source>
        <translation>Gedruckt, wie die Rückseite zu sehen ist, und dort aufgeklebt: er zeigt, was von hinten gebohrt wird. Volle Kreise werden von dieser Seite gebohrt, gestrichelte kommen von der Vorderseite durch.</translation>
    </message>
    <message>
        <source>Printed at full size and glued round the blank: the face and both edges in one piece.</source>
        <translation>In voller Größe gedruckt und um den Rohling geklebt: Vorderseite und beide Kanten in einem Stück.</translation>
    </message>
    <message>
        <source>Printed paper</source>
        <translation>Gedrucktes Papier</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>Printer correction</source>
        <translation>Druckerkorrektur</translation>
    </message>
    <message>
        <source>Printers seldom stray by more than 2 %: look first whether a setting scales the page, and measure the bars once more.</source>
        <translation>Drucker weichen selten mehr als 2 % ab: zuerst sehen, ob eine Einstellung die Seite skaliert, und die Balken noch einmal messen.</translation>
    </message>
    <message>
        <source>Printers stretch a page a little, each way by its own amount. Both bars of a printed page are measured, and pages are printed so much smaller or larger that they come out true.</source>
        <translation>Drucker dehnen eine Seite ein wenig, in jeder Richtung anders. Beide Balken einer gedruckten Seite werden gemessen, und die Seiten so viel kleiner oder größer gedruckt, dass sie maßhaltig werden.</translation>
    </message>
    <message>
        <source>Printing was cancelled; pages that were sent already may still come out of the printer.</source>
        <translation>Der Druck wurde abgebrochen; schon gesendete Seiten können noch aus dem Drucker kommen.</translation>
    </message>
    <message>
        <source>Printing…</source>
        <translation>Wird gedruckt …</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Programs that ended without saving left {n} pieces of work behind that cannot be read.</source>
        <translation>Programme, die ohne zu speichern endeten, haben {n} Stücke Arbeit hinterlassen, die sich nicht lesen lassen.</translation>
    </message>
    <message>
        <source>Propose a ramp that frees the strings</source>
        <translation>Eine Rampe vorschlagen, die die Saiten freigibt</translation>
    </message>
    <message>
        <source>Propose an outline along the edge in the picture.</source>
        <translation>Einen Umriss entlang der Kante im Bild vorschlagen.</translation>
    </message>
    <message>
        <source>Propose p&amp;ins</source>
        <translation>Stifte v&amp;orschlagen</translation>
    </message>
    <message>
        <source>Propose pins</source>
        <translation>Stifte vorschlagen</translation>
    </message>
    <message>
        <source>Propose posts for strings</source>
        <translation>Wellen für die Saiten vorschlagen</translation>
    </message>
    <message>
        <source>Propose which post serves which string</source>
        <translation>Vorschlagen, welche Welle welcher Saite dient</translation>
    </message>
    <message>
        <source>Protects {what}.</source>
        <translation>Schützt {what}.</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurückgelegt</translation>
    </message>
    <message>
        <source>Put back what the drag moved; again: hold nothing</source>
        <translation>Zurücklegen, was gezogen wurde; noch einmal: nichts halten</translation>
    </message>
    <message>
        <source>Put the drawing back. Or tick its step again: at once if it came out as the drawing has it now, else when it is plugged and drilled anew.</source>
        <translation>Die Zeichnung zurückstellen. Oder den Schritt noch einmal abhaken: sofort, wenn das Loch so ausgefallen ist, wie die Zeichnung es jetzt hat, sonst, wenn es verschlossen und neu gebohrt ist.</translation>
    </message>
    <message>
        <source>Put the drawing back. Or tick its steps again: at once if it came out as the drawing has it now, else when wood is glued on and it is cut anew.</source>
        <translation>Die Zeichnung zurückstellen. Oder die Schritte noch einmal abhaken: sofort, wenn die Form so ausgefallen ist, wie die Zeichnung sie jetzt hat, sonst, wenn Holz angeleimt und sie neu ausgearbeitet ist.</translation>
    </message>
    <message>
        <source>Put the drawing back. Or tick its steps again: at once if it came out as the drawing has it now, else when wood is let in and it is cut anew.</source>
        <translation>Die Zeichnung zurückstellen. Oder die Schritte noch einmal abhaken: sofort, wenn die Form so ausgefallen ist, wie die Zeichnung sie jetzt hat, sonst, wenn Holz eingesetzt und sie neu ausgearbeitet ist.</translation>
    </message>
    <message>
        <source>Put the pen down, or lift it: what is between is pulled, as the handle of a curve</source>
        <translation>Den Stift absetzen oder heben: dazwischen wird gezogen, wie am Griff einer Kurve</translation>
    </message>
    <message>
        <source>Qt and PySide6 are used under the GNU Lesser General Public License, version 3: they may be replaced by other builds of the same version. Their source text is at {place}. GEOS, inside shapely, is under the same licence, version 2.1; its source text is at {other}.</source>
        <translation>Qt und PySide6 werden unter der GNU Lesser General Public License, Version 3, verwendet: sie dürfen durch andere Ausgaben derselben Version ersetzt werden. Ihr Quelltext liegt unter {place}. GEOS, in shapely enthalten, steht unter derselben Lizenz, Version 2.1; sein Quelltext liegt unter {other}.</translation>
    </message>
    <message>
        <source>Quill travel</source>
        <translation>Pinolenhub</translation>
    </message>
    <message>
        <source>R&amp;emove</source>
        <translation>E&amp;ntfernen</translation>
    </message>
    <message>
        <source>Rac&amp;k: bits, drills, machines</source>
        <translation>Bestan&amp;d: Fräser, Bohrer, Maschinen</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Racks (*.json)</source>
        <translation>Bestände (*.json)</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>Rail</source>
        <translation>Wange</translation>
    </message>
    <message>
        <source>Rail is thin</source>
        <translation>Wange ist dünn</translation>
    </message>
    <message>
        <source>Rail is thin behind a flat</source>
        <translation>Wange hinter einer Fläche ist dünn</translation>
    </message>
    <message>
        <source>Raise the nut, or let the face lie deeper below it.</source>
        <translation>Den Sattel höher machen oder die Vorderseite tiefer unter ihn legen.</translation>
    </message>
    <message>
        <source>Raise the table and drill on in a second travel.</source>
        <translation>Den Tisch anheben und in einem zweiten Hub weiterbohren.</translation>
    </message>
    <message>
        <source>Ramp</source>
        <translation>Rampe</translation>
    </message>
    <message>
        <source>Ramp close to a pocket</source>
        <translation>Rampe nahe an einer Tasche</translation>
    </message>
    <message>
        <source>Ramp close to another slot</source>
        <translation>Rampe nahe an einem anderen Schlitz</translation>
    </message>
    <message>
        <source>Ramp close to the nut</source>
        <translation>Rampe nahe am Sattel</translation>
    </message>
    <message>
        <source>Ramp close to the outline</source>
        <translation>Rampe nahe am Umriss</translation>
    </message>
    <message>
        <source>Ramp of {id}</source>
        <translation>Rampe von {id}</translation>
    </message>
    <message>
        <source>Ramp too deep</source>
        <translation>Rampe zu tief</translation>
    </message>
    <message>
        <source>Ramp {slot}</source>
        <translation>Rampe {slot}</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Reichweite</translation>
    </message>
    <message>
        <source>Reach from the post</source>
        <translation>Reichweite ab der Welle</translation>
    </message>
    <message>
        <source>Reaches</source>
        <translation>Reicht</translation>
    </message>
    <message>
        <source>Read a rack from a file.</source>
        <translation>Einen Bestand aus einer Datei lesen.</translation>
    </message>
    <message>
        <source>Read an outline from a DXF or SVG drawing.</source>
        <translation>Einen Umriss aus einer DXF- oder SVG-Zeichnung lesen.</translation>
    </message>
    <message>
        <source>Reading of {drilling}</source>
        <translation>Messwert von {drilling}</translation>
    </message>
    <message>
        <source>Reading {name}…</source>
        <translation>{name} wird gelesen…</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Readings, practice piece</source>
        <translation>Messwerte, Probestück</translation>
    </message>
    <message>
        <source>Readings, real piece</source>
        <translation>Messwerte, echtes Stück</translation>
    </message>
    <message>
        <source>Real</source>
        <comment>head of a column</comment>
        <translation>Echt</translation>
    </message>
    <message>
        <source>Real against practice, {n} timed on both</source>
        <translation>Echtes gegen Probe, {n} auf beiden gestoppt</translation>
    </message>
    <message>
        <source>Real piece</source>
        <translation>Echtes Stück</translation>
    </message>
    <message>
        <source>Real − practice</source>
        <comment>head of a column</comment>
        <translation>Echt − Probe</translation>
    </message>
    <message>
        <source>Ream it wider, or with a taper that narrows less.</source>
        <translation>Weiter aufreiben oder mit einem Kegel, der langsamer enger wird.</translation>
    </message>
    <message>
        <source>Ream the {operation} of {of} by hand, from the {surface}, taper 1:{taper:g}, until it is {wide} wide there: a few turns at a time, in the cutting direction alone, and try the peg often.</source>
        <translation>{operation} von {of} von Hand aufreiben, Ansatz: {surface}, Verjüngung 1:{taper:g}, bis sie dort {wide} weit ist: je wenige Umdrehungen, nur in Schneidrichtung, und den Wirbel oft probieren.</translation>
    </message>
    <message>
        <source>Ream {of}</source>
        <translation>{of} aufreiben</translation>
    </message>
    <message>
        <source>Reamed 1:{taper:g} the {operation} of {item} would be {narrow} mm wide at its far end, where the drill leaves {drilled} mm: the peg would not bear there.</source>
        <translation>1:{taper:g} aufgerieben wäre „{operation}“ von {item} am fernen Ende {narrow} mm weit, wo der Bohrer {drilled} mm lässt: der Wirbel läge dort nicht an.</translation>
    </message>
    <message>
        <source>Reamed 1:{taper:g} the {operation} of {item} would run out to nothing towards its far end: the peg would not bear there.</source>
        <translation>1:{taper:g} aufgerieben liefe „{operation}“ von {item} zum fernen Ende hin auf nichts aus: der Wirbel läge dort nicht an.</translation>
    </message>
    <message>
        <source>Reamed to</source>
        <translation>Aufgerieben auf</translation>
    </message>
    <message>
        <source>Reamer does not reach through</source>
        <translation>Reibahle kommt nicht durch</translation>
    </message>
    <message>
        <source>References are nested more than {deepest} deep in the SVG file: expand its clones in the program that drew it.</source>
        <translation>Verweise sind in der SVG-Datei tiefer als {deepest} verschachtelt: die Klone im zeichnenden Programm auflösen.</translation>
    </message>
    <message>
        <source>Remind me next time</source>
        <translation>Beim nächsten Mal erinnern</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove bore {k}</source>
        <translation>Bohrung {k} entfernen</translation>
    </message>
    <message>
        <source>Remove string {string}</source>
        <translation>Saite {string} entfernen</translation>
    </message>
    <message>
        <source>Remove the node</source>
        <translation>Den Knoten entfernen</translation>
    </message>
    <message>
        <source>Remove this ear</source>
        <translation>Dieses Ohr entfernen</translation>
    </message>
    <message>
        <source>Remove this hardware</source>
        <translation>Diese Mechanik entfernen</translation>
    </message>
    <message>
        <source>Remove what is held.</source>
        <translation>Entfernen, was gehalten wird.</translation>
    </message>
    <message>
        <source>Remove {held}</source>
        <translation>{held} entfernen</translation>
    </message>
    <message>
        <source>Remove {id}</source>
        <translation>{id} entfernen</translation>
    </message>
    <message>
        <source>Remove {n} nodes</source>
        <translation>{n} Knoten entfernen</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Replace this file?</source>
        <translation>Diese Datei ersetzen?</translation>
    </message>
    <message>
        <source>Report about the fault</source>
        <translation>Bericht über den Fehler</translation>
    </message>
    <message>
        <source>Reshape the outline, or choose other hardware.</source>
        <translation>Den Umriss ändern oder andere Mechaniken wählen.</translation>
    </message>
    <message>
        <source>Reshape {opening}, or choose other hardware.</source>
        <translation>{opening} ändern oder andere Mechaniken wählen.</translation>
    </message>
    <message>
        <source>Rim speed at each setting</source>
        <translation>Schnittgeschwindigkeit je Stufe</translation>
    </message>
    <message>
        <source>Ring the places where the shop's own errors do harm.</source>
        <translation>Die Stellen einkreisen, an denen die Fehler der Werkstatt schaden.</translation>
    </message>
    <message>
        <source>Roller of 10 through the side as on a slotted head, plate with a screw to either side.</source>
        <translation>Walze von 10 durch die Seite wie bei durchbrochener Kopfplatte, Platte mit je einer Schraube zu beiden Seiten.</translation>
    </message>
    <message>
        <source>Roller of 10 through the side, long enough to bear in the wood between the slots.</source>
        <translation>Walze von 10 durch die Seite, lang genug, um im Holz zwischen den Schlitzen zu lagern.</translation>
    </message>
    <message>
        <source>Roller of 25/64 inch through the side as on a slotted head, plate with a screw to either side.</source>
        <translation>Walze von 25/64 Zoll durch die Seite wie bei durchbrochener Kopfplatte, Platte mit je einer Schraube zu beiden Seiten.</translation>
    </message>
    <message>
        <source>Round the cor&amp;ner…</source>
        <translation>Die &amp;Ecke runden…</translation>
    </message>
    <message>
        <source>Round the corner</source>
        <translation>Ecke runden</translation>
    </message>
    <message>
        <source>Round the corner that is held.</source>
        <translation>Die gehaltene Ecke runden.</translation>
    </message>
    <message>
        <source>Round the outside less than half of the base stands on the template, at {at} only {share:.0f} %: keep your weight on the template's side, or lay a piece of the same thickness beside the work.</source>
        <translation>Außen herum steht weniger als die halbe Fußplatte auf der Schablone, bei {at} nur {share:.0f} %: das Gewicht auf der Schablonenseite halten oder ein gleich dickes Stück danebenlegen.</translation>
    </message>
    <message>
        <source>Round…</source>
        <translation>Runden…</translation>
    </message>
    <message>
        <source>Rout the outline</source>
        <translation>Den Umriss fräsen</translation>
    </message>
    <message>
        <source>Rout the outline from the back</source>
        <translation>Den Umriss von der Rückseite fräsen</translation>
    </message>
    <message>
        <source>Rout the outline from the face</source>
        <translation>Den Umriss von der Vorderseite fräsen</translation>
    </message>
    <message>
        <source>Rout the outline, 100 mm</source>
        <translation>Umriss fräsen, 100 mm</translation>
    </message>
    <message>
        <source>Rout {opening} less deep by {by} mm, or right through.</source>
        <translation>{opening} um {by} mm weniger tief fräsen oder ganz durch.</translation>
    </message>
    <message>
        <source>Rout {slots}</source>
        <translation>Fräsen: {slots}</translation>
    </message>
    <message>
        <source>Rout {slot} deeper by {by} mm.</source>
        <translation>{slot} um {by} mm tiefer fräsen.</translation>
    </message>
    <message>
        <source>Rout {what}</source>
        <translation>{what} fräsen</translation>
    </message>
    <message>
        <source>Rout {what} deeper by {by}</source>
        <translation>{what} um {by} tiefer fräsen</translation>
    </message>
    <message>
        <source>Rout {what} from the back</source>
        <translation>{what} von der Rückseite fräsen</translation>
    </message>
    <message>
        <source>Rout {what} from the face</source>
        <translation>{what} von der Vorderseite fräsen</translation>
    </message>
    <message>
        <source>Rout {what} less deep by {by}</source>
        <translation>{what} um {by} weniger tief fräsen</translation>
    </message>
    <message>
        <source>Rout {what} to its line.</source>
        <translation>{what} bis zur Linie fräsen.</translation>
    </message>
    <message>
        <source>Rout, 100 mm and pass</source>
        <translation>Fräsen, 100 mm und Durchgang</translation>
    </message>
    <message>
        <source>Router</source>
        <translation>Oberfräse</translation>
    </message>
    <message>
        <source>Router bits</source>
        <translation>Fräser</translation>
    </message>
    <message>
        <source>Router bits slimmer than {slim} then cut half as deep in a pass.</source>
        <translation>Fräser unter {slim} schneiden dann in einem Durchgang halb so tief.</translation>
    </message>
    <message>
        <source>Router plan of the outline: bit {number} of {bits}</source>
        <translation>Fräsplan für den Umriss: Fräser {number} von {bits}</translation>
    </message>
    <message>
        <source>Router plan of the outline: pair of bits {number} of at most {trials}</source>
        <translation>Fräsplan für den Umriss: Fräserpaar {number} von höchstens {trials}</translation>
    </message>
    <message>
        <source>Router plan of {slot}: bit {number} of {bits}</source>
        <translation>Fräsplan für {slot}: Fräser {number} von {bits}</translation>
    </message>
    <message>
        <source>Router plan of {slot}: pair of bits {number} of at most {trials}</source>
        <translation>Fräsplan für {slot}: Fräserpaar {number} von höchstens {trials}</translation>
    </message>
    <message>
        <source>Router: unplug before changing a bit, keep below the speed marked on it, wear eye and ear protection, secure the work, feed against the cutter's turning, take light passes, never shape small loose pieces, collect the dust.</source>
        <translation>Oberfräse: vor dem Fräserwechsel den Stecker ziehen, unter der aufgedruckten Drehzahl bleiben, Augen- und Gehörschutz tragen, das Werkstück sichern, gegen die Drehung des Fräsers führen, wenig Span nehmen, nie kleine lose Teile fräsen, den Staub absaugen.</translation>
    </message>
    <message>
        <source>Row &amp;along the edge</source>
        <translation>Reihe entl&amp;ang der Kante</translation>
    </message>
    <message>
        <source>Row begins, across</source>
        <translation>Reihe beginnt, quer</translation>
    </message>
    <message>
        <source>Row begins, along</source>
        <translation>Reihe beginnt, längs</translation>
    </message>
    <message>
        <source>Row begins, along the edge</source>
        <translation>Reihe beginnt, an der Kante</translation>
    </message>
    <message>
        <source>Row heads</source>
        <translation>Richtung der Reihe</translation>
    </message>
    <message>
        <source>Row stands in from the edge</source>
        <translation>Reihe steht von der Kante ab</translation>
    </message>
    <message>
        <source>Row's buttons point</source>
        <translation>Richtung der Flügel</translation>
    </message>
    <message>
        <source>Rule the paper.</source>
        <translation>Das Papier linieren.</translation>
    </message>
    <message>
        <source>Running order</source>
        <translation>Arbeitsfolge</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läuft</translation>
    </message>
    <message>
        <source>S&amp;napping</source>
        <translation>&amp;Fangen</translation>
    </message>
    <message>
        <source>S, Shift+S</source>
        <translation>S, Umschalt+S</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Same setting: {parts}.</source>
        <translation>Gleiche Einstellung: {parts}.</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;als…</translation>
    </message>
    <message>
        <source>Save elsewhere…</source>
        <translation>Anderswo speichern…</translation>
    </message>
    <message>
        <source>Save mine elsewhere…</source>
        <translation>Meine anderswo speichern…</translation>
    </message>
    <message>
        <source>Save mine here</source>
        <translation>Meine hier speichern</translation>
    </message>
    <message>
        <source>Save the layout</source>
        <translation>Den Entwurf speichern</translation>
    </message>
    <message>
        <source>Save the layout under another name.</source>
        <translation>Den Entwurf unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>Save the layout.</source>
        <translation>Den Entwurf speichern.</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Den Bericht speichern</translation>
    </message>
    <message>
        <source>Save the report…</source>
        <translation>Den Bericht speichern…</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>Saved with the layout, so that it opens the same anywhere. Plans are made with this rack.</source>
        <translation>Mit dem Entwurf gespeichert, damit er überall gleich öffnet. Die Pläne werden mit diesem Bestand gemacht.</translation>
    </message>
    <message>
        <source>Saved: {name}</source>
        <translation>Gespeichert: {name}</translation>
    </message>
    <message>
        <source>Saved: {name}. {n} other name of this file keeps the version before.</source>
        <translation>Gespeichert: {name}. {n} anderer Name dieser Datei behält die Fassung davor.</translation>
    </message>
    <message>
        <source>Saved: {name}. {n} other names of this file keep the version before.</source>
        <translation>Gespeichert: {name}. {n} andere Namen dieser Datei behalten die Fassung davor.</translation>
    </message>
    <message>
        <source>Saving yours keeps theirs beside it as the version before. Taking theirs makes yours one undo away.</source>
        <translation>Speichern Sie Ihre, bleibt die andere als Fassung davor daneben. Nehmen Sie die andere, holt einmal „Rückgängig“ Ihre zurück.</translation>
    </message>
    <message>
        <source>Saw out {slot}</source>
        <translation>{slot} aussägen</translation>
    </message>
    <message>
        <source>Saw out, 100 mm</source>
        <translation>Aussägen, 100 mm</translation>
    </message>
    <message>
        <source>Saw the joint at {pitch:.1f} degrees and parallel to the slanted nut line, plane both slopes flat, glue them with the pieces held from sliding, leave them in the clamps until the glue is hard, and plane the head to {core}.</source>
        <translation>Die Schäftung mit {pitch:.1f} Grad und parallel zur schrägen Sattellinie sägen, beide Schrägen eben hobeln, die Stücke gegen Rutschen gesichert verleimen, in den Zwingen lassen, bis der Leim hart ist, und die Kopfplatte auf {core} hobeln.</translation>
    </message>
    <message>
        <source>Saw the joint at {pitch:.1f} degrees, plane both slopes flat and square to the edges, glue them with the pieces held from sliding, leave them in the clamps until the glue is hard, and plane the head to {core}.</source>
        <translation>Die Schäftung mit {pitch:.1f} Grad sägen, beide Schrägen eben und rechtwinklig zu den Kanten hobeln, die Stücke gegen Rutschen gesichert verleimen, in den Zwingen lassen, bis der Leim hart ist, und die Kopfplatte auf {core} hobeln.</translation>
    </message>
    <message>
        <source>Saw the outline</source>
        <translation>Den Umriss sägen</translation>
    </message>
    <message>
        <source>Saw the outline, 100 mm</source>
        <translation>Umriss sägen, 100 mm</translation>
    </message>
    <message>
        <source>Saw the waste off to within {light} outside the line.</source>
        <translation>Den Abfall bis auf {light} außerhalb der Linie absägen.</translation>
    </message>
    <message>
        <source>Saw, plane and glue a scarf joint</source>
        <translation>Eine Schäftung sägen, hobeln und leimen</translation>
    </message>
    <message>
        <source>Sawn head</source>
        <translation>Gesägte Kopfplatte</translation>
    </message>
    <message>
        <source>Scale length</source>
        <translation>Mensur</translation>
    </message>
    <message>
        <source>Scale length, bass and treble side</source>
        <translation>Mensur, Bass- und Diskantseite</translation>
    </message>
    <message>
        <source>Scale length, bass side</source>
        <translation>Mensur, Bassseite</translation>
    </message>
    <message>
        <source>Scale length, treble side</source>
        <translation>Mensur, Diskantseite</translation>
    </message>
    <message>
        <source>Scarf joint</source>
        <translation>Schäftung</translation>
    </message>
    <message>
        <source>Scarf joint, its line on the face</source>
        <translation>Schäftung, ihre Fuge auf der Vorderseite</translation>
    </message>
    <message>
        <source>Scrap held behind the work so that the drill leaves into wood.</source>
        <translation>Abfallholz hinter dem Werkstück, damit der Bohrer ins Holz austritt.</translation>
    </message>
    <message>
        <source>Screw and bore to a feather edge</source>
        <translation>Schraube und Bohrung zur auslaufenden Kante</translation>
    </message>
    <message>
        <source>Screw in a feather edge</source>
        <translation>Schraube in einer auslaufenden Kante</translation>
    </message>
    <message>
        <source>Screw misses the wood</source>
        <translation>Schraube trifft kein Holz</translation>
    </message>
    <message>
        <source>Screw pilots in the edges: the running order drills them by hand through the plate, once the outline is finished, as deep as depth says. Mark and stop hold only while the edges are square.</source>
        <translation>Vorbohrungen in den Kanten: Nach der Folge werden sie von Hand durch die Platte gebohrt, wenn der Umriss fertig ist, so tief wie unter Tiefe steht. Anriss und Bohrtiefe gelten nur, solange die Kanten gerade sind.</translation>
    </message>
    <message>
        <source>Screw pilots, the holes of moulded pins and those of locating pins are left out.</source>
        <translation>Vorbohrungen für Schrauben, Löcher für angegossene Stifte und solche für Passstifte sind weggelassen.</translation>
    </message>
    <message>
        <source>Screw to anything</source>
        <translation>Schraube zu allem</translation>
    </message>
    <message>
        <source>Screw to outline</source>
        <translation>Schraube zu Umriss</translation>
    </message>
    <message>
        <source>Screws and pins</source>
        <translation>Schrauben und Stifte</translation>
    </message>
    <message>
        <source>Screws beside side bores have no mark: drill them by hand through the plate, on the finished edge.</source>
        <translation>Die Schrauben neben Seitenbohrungen sind nicht angezeichnet: von Hand durch die Platte bohren, an der fertigen Kante.</translation>
    </message>
    <message>
        <source>Seat</source>
        <translation>Sitz</translation>
    </message>
    <message>
        <source>Second handle, across</source>
        <translation>Zweiter Griff, quer</translation>
    </message>
    <message>
        <source>Second handle, along</source>
        <translation>Zweiter Griff, längs</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Section across, through {ids}</source>
        <translation>Schnitt quer durch {ids}</translation>
    </message>
    <message>
        <source>Section along the bore</source>
        <translation>Schnitt entlang der Bohrung</translation>
    </message>
    <message>
        <source>Section along the line</source>
        <translation>Schnitt entlang der Linie</translation>
    </message>
    <message>
        <source>Section at the post, square to its edge</source>
        <translation>Schnitt an der Welle, quer zur Kante</translation>
    </message>
    <message>
        <source>Section through the cut</source>
        <translation>Schnitt durch die Fräsung</translation>
    </message>
    <message>
        <source>Section through the piece at this step</source>
        <translation>Schnitt durch das Stück bei diesem Schritt</translation>
    </message>
    <message>
        <source>Section through {name}</source>
        <translation>Schnitt durch {name}</translation>
    </message>
    <message>
        <source>Sections across the cut, {scale_words}. The cutter has done this pass at the left wall; at the right it is to come.</source>
        <translation>Schnitte quer zur Fräsung, {scale_words}. An der linken Wand ist dieser Durchgang getan; an der rechten kommt er noch.</translation>
    </message>
    <message>
        <source>Sections across the edge, {scale_words}.</source>
        <translation>Schnitte quer zur Kante, {scale_words}.</translation>
    </message>
    <message>
        <source>Seen from behind, the nut towards you: the treble side is on the left.</source>
        <translation>Von hinten gesehen, der Sattel zu Ihnen: die Diskantseite ist links.</translation>
    </message>
    <message>
        <source>Seen from the face, the nut towards you: the bass side is on the left.</source>
        <translation>Von vorn gesehen, der Sattel zu Ihnen: die Bassseite ist links.</translation>
    </message>
    <message>
        <source>Seen in the head: tick what the layout is to take, here or by pressing on it in the picture. A slot or hole that the layout has there already is moved onto it, unless it is in the wood already.</source>
        <translation>In der Kopfplatte zu sehen: ankreuzen, was der Entwurf übernehmen soll, hier oder mit einem Klick darauf im Bild. Ein Schlitz oder Loch, das der Entwurf dort schon hat, rückt an diese Stelle, wenn es nicht schon im Holz ist.</translation>
    </message>
    <message>
        <source>Seen to</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Set &amp;out</source>
        <translation>Aus&amp;richten</translation>
    </message>
    <message>
        <source>Set a string retainer (Strings stage), wind the string lower on its post, lean the head back farther, or let the face lie deeper below the nut.</source>
        <translation>Einen Saitenniederhalter setzen (Bereich Saiten), die Saite tiefer auf die Welle wickeln, die Kopfplatte weiter nach hinten neigen oder die Vorderseite tiefer unter den Sattel legen.</translation>
    </message>
    <message>
        <source>Set it lower, make it wider, or move it over the strings.</source>
        <translation>Tiefer setzen, breiter machen oder über die Saiten schieben.</translation>
    </message>
    <message>
        <source>Set of strings</source>
        <translation>Saitensatz</translation>
    </message>
    <message>
        <source>Set the axis of {item} deeper by {amount} mm, or rout {opening} that much less deep.</source>
        <translation>Die Achse von {item} um {amount} mm tiefer setzen oder {opening} um so viel weniger tief fräsen.</translation>
    </message>
    <message>
        <source>Set the axis of {item} deeper by {by} mm.</source>
        <translation>Die Achse von {item} um {by} mm tiefer setzen.</translation>
    </message>
    <message>
        <source>Set the axis of {item} higher by {by} mm.</source>
        <translation>Die Achse von {item} um {by} mm höher setzen.</translation>
    </message>
    <message>
        <source>Set the axis of {what} deeper by {by}</source>
        <translation>Die Achse von {what} um {by} tiefer setzen</translation>
    </message>
    <message>
        <source>Set the axis of {what} higher by {by}</source>
        <translation>Die Achse von {what} um {by} höher setzen</translation>
    </message>
    <message>
        <source>Set the axis {by} mm deeper, or choose a narrower plate.</source>
        <translation>Die Achse {by} mm tiefer setzen oder eine schmalere Platte wählen.</translation>
    </message>
    <message>
        <source>Set the axis {by} mm higher, or choose a narrower plate.</source>
        <translation>Die Achse {by} mm höher setzen oder eine schmalere Platte wählen.</translation>
    </message>
    <message>
        <source>Set the guard just above the wood, keep your fingers out of the line of the blade, and take a tight curve in several cuts.</source>
        <translation>Die Blattführung bis knapp über das Holz senken, die Finger nie in die Linie des Sägeblatts, enge Bögen in mehreren Schnitten.</translation>
    </message>
    <message>
        <source>Set the pin elsewhere, or make the ear longer.</source>
        <translation>Den Passstift anderswohin setzen oder das Ohr länger machen.</translation>
    </message>
    <message>
        <source>Set the pin elsewhere: beside the ways of the side bores, or in wood that stays.</source>
        <translation>Den Stift woanders setzen: neben die Wege der Seitenbohrungen oder in Holz, das bleibt.</translation>
    </message>
    <message>
        <source>Set the retainer higher.</source>
        <translation>Den Niederhalter höher setzen.</translation>
    </message>
    <message>
        <source>Set the row “{what}” by {by} farther in from the edge</source>
        <translation>Die Reihe „{what}“ um {by} weiter von der Kante weg setzen</translation>
    </message>
    <message>
        <source>Set the row “{what}” by {by} nearer to the edge</source>
        <translation>Die Reihe „{what}“ um {by} näher an die Kante setzen</translation>
    </message>
    <message>
        <source>Set the screw between two strings, or beside all of them.</source>
        <translation>Die Schraube zwischen zwei Saiten oder neben alle setzen.</translation>
    </message>
    <message>
        <source>Set the table</source>
        <translation>Den Tisch einstellen</translation>
    </message>
    <message>
        <source>Set them apart, or both at one level and equally high: then they are one bar on two screws.</source>
        <translation>Auseinander setzen, oder beide auf eine Linie und gleich hoch: Dann sind sie ein Niederhalter auf zwei Schrauben.</translation>
    </message>
    <message>
        <source>Set these two farther apart in the pattern {pattern}, or choose hardware with room between them.</source>
        <translation>Die beiden im Bohrbild {pattern} weiter auseinandersetzen oder Mechaniken mit mehr Platz dazwischen wählen.</translation>
    </message>
    <message>
        <source>Set to scale, and its outline traced.</source>
        <translation>Im Maßstab, mit nachgezogenem Umriss.</translation>
    </message>
    <message>
        <source>Set to scale, straightened, on the nut line.</source>
        <translation>Im Maßstab, entzerrt, auf der Sattellinie.</translation>
    </message>
    <message>
        <source>Set two pins on the centreline, as far apart as the wood allows (Propose pins, Slots stage).</source>
        <translation>Zwei Stifte auf die Mittellinie setzen, so weit auseinander, wie das Holz erlaubt (Stifte vorschlagen, Bereich Schlitze).</translation>
    </message>
    <message>
        <source>Set-ups and changes</source>
        <translation>Rüsten und Wechsel</translation>
    </message>
    <message>
        <source>Sets scale length, height, pitch and strings as they are usual for an instrument. Width and slant of the nut stay, and the first and the last string stand where they are.</source>
        <translation>Setzt Mensur, Höhe, Kopfwinkel und Saiten, wie sie für ein Instrument üblich sind. Breite und Schräge des Sattels bleiben, die erste und die letzte Saite stehen, wo sie sind.</translation>
    </message>
    <message>
        <source>Setting up and changing over</source>
        <translation>Rüsten und Umrüsten</translation>
    </message>
    <message>
        <source>Shank</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>Shanks that the router holds, a semicolon between them, or a comma and a space; empty for any.</source>
        <translation>Schäfte, die die Oberfräse hält, dazwischen ein Strichpunkt, oder ein Komma und ein Leerzeichen; leer für alle.</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Shape its wall freely</source>
        <translation>Wand frei formen</translation>
    </message>
    <message>
        <source>Shares its setting with</source>
        <translation>Gleiche Einstellung wie</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Shift across</source>
        <translation>Quer verschieben</translation>
    </message>
    <message>
        <source>Shift along</source>
        <translation>Längs verschieben</translation>
    </message>
    <message>
        <source>Shift and press</source>
        <translation>Umschalt und Klick</translation>
    </message>
    <message>
        <source>Shift while dragging</source>
        <translation>Umschalt beim Ziehen</translation>
    </message>
    <message>
        <source>Shift+Space, with the pen</source>
        <translation>Umschalt+Leertaste, mit dem Stift</translation>
    </message>
    <message>
        <source>Shop accuracy</source>
        <translation>Werkstattgenauigkeit</translation>
    </message>
    <message>
        <source>Shop accuracy, plus or minus</source>
        <translation>Werkstattgenauigkeit, plus oder minus</translation>
    </message>
    <message>
        <source>Short steel post through the side into a shared slot, a screw to either side.</source>
        <translation>Kurze Stahlwelle durch die Seite in einen gemeinsamen Schlitz, eine Schraube zu jeder Seite.</translation>
    </message>
    <message>
        <source>Shorten {what} by {by} at its {end} end</source>
        <translation>{what} um {by} kürzen ({end})</translation>
    </message>
    <message>
        <source>Show its folder</source>
        <translation>Ordner zeigen</translation>
    </message>
    <message>
        <source>Show lengths in decimal inches.</source>
        <translation>Längen in dezimalen Zoll zeigen.</translation>
    </message>
    <message>
        <source>Show lengths in inches down to 1/64.</source>
        <translation>Längen in Zoll bis 1/64 zeigen.</translation>
    </message>
    <message>
        <source>Show lengths in mm.</source>
        <translation>Längen in mm zeigen.</translation>
    </message>
    <message>
        <source>Show or hide the picture behind the drawing.</source>
        <translation>Das Bild hinter der Zeichnung zeigen oder verbergen.</translation>
    </message>
    <message>
        <source>Show the build step by step</source>
        <translation>Den Bau Schritt für Schritt zeigen</translation>
    </message>
    <message>
        <source>Show the panel and the lists, or give the drawing their room.</source>
        <translation>Tafel und Listen zeigen oder der Zeichnung ihren Platz geben.</translation>
    </message>
    <message>
        <source>Show the picture</source>
        <translation>Das Bild zeigen</translation>
    </message>
    <message>
        <source>Show the picture fainter</source>
        <translation>Das Bild schwächer zeigen</translation>
    </message>
    <message>
        <source>Show the picture stronger</source>
        <translation>Das Bild stärker zeigen</translation>
    </message>
    <message>
        <source>Show the whole opened-out view.</source>
        <translation>Die ganze Abwicklung zeigen.</translation>
    </message>
    <message>
        <source>Show the whole page (0)</source>
        <translation>Die ganze Seite zeigen (0)</translation>
    </message>
    <message>
        <source>Show: {what}</source>
        <translation>Zeigen: {what}</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Side angle</source>
        <translation>Seitenwinkel</translation>
    </message>
    <message>
        <source>Side bore goes through wood beyond its seat</source>
        <translation>Seitenbohrung geht durch Holz vor ihrem Sitz</translation>
    </message>
    <message>
        <source>Side bore meets no slot</source>
        <translation>Seitenbohrung trifft keinen Schlitz</translation>
    </message>
    <message>
        <source>Side bores meet in the waste</source>
        <translation>Seitenbohrungen treffen sich im Abfall</translation>
    </message>
    <message>
        <source>Side of the post through the face, over or under one through the side.</source>
        <translation>Seite der Welle durch die Vorderseite, über oder unter einer durch die Seite.</translation>
    </message>
    <message>
        <source>Side of the string on {at}</source>
        <translation>Saitenseite bei {at}</translation>
    </message>
    <message>
        <source>Side tuner {id} sits on its edge: it cannot be moved across.</source>
        <translation>Seitenmechanik {id} sitzt auf ihrer Kante: quer lässt sie sich nicht verschieben.</translation>
    </message>
    <message>
        <source>Side tuner, {tuner}</source>
        <translation>Seitenmechanik, {tuner}</translation>
    </message>
    <message>
        <source>Side tuners sit on an edge, so their row follows the edge.</source>
        <translation>Seitenmechaniken sitzen auf einer Kante, ihre Reihe folgt der Kante.</translation>
    </message>
    <message>
        <source>Side tuners sit on an edge, so they are spread along it.</source>
        <translation>Seitenmechaniken sitzen auf einer Kante und werden darauf verteilt.</translation>
    </message>
    <message>
        <source>Six in line, through the face</source>
        <translation>Sechs in Reihe, durch die Vorderseite</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Size and place of the picture</source>
        <translation>Größe und Lage des Bildes</translation>
    </message>
    <message>
        <source>Size of &amp;letters</source>
        <translation>Größe der S&amp;chrift</translation>
    </message>
    <message>
        <source>Slant of the nut</source>
        <translation>Schräge des Sattels</translation>
    </message>
    <message>
        <source>Slide {id}</source>
        <translation>{id} verschieben</translation>
    </message>
    <message>
        <source>Slide {item} along its edge, or plug {other} with wood first.</source>
        <translation>{item} auf der Kante verschieben, oder {other} zuvor mit Holz verschließen.</translation>
    </message>
    <message>
        <source>Slide {item} by {amount} mm to the nut, or move {opening} that much to the tip.</source>
        <translation>{item} um {amount} mm zum Sattel schieben oder {opening} um so viel zur Spitze rücken.</translation>
    </message>
    <message>
        <source>Slide {item} by {amount} mm to the nut, or reshape the outline.</source>
        <translation>{item} um {amount} mm zum Sattel schieben oder den Umriss ändern.</translation>
    </message>
    <message>
        <source>Slide {item} by {amount} mm to the tip, or move {opening} that much to the nut.</source>
        <translation>{item} um {amount} mm zur Spitze schieben oder {opening} um so viel zum Sattel rücken.</translation>
    </message>
    <message>
        <source>Slide {item} by {amount} mm to the tip, or reshape the outline.</source>
        <translation>{item} um {amount} mm zur Spitze schieben oder den Umriss ändern.</translation>
    </message>
    <message>
        <source>Slide {item} by {by} mm to the {end}.</source>
        <translation>{item} um {by} mm verschieben, Richtung {end}.</translation>
    </message>
    <message>
        <source>Slide {item} by {lacking} mm to the {end}, or lengthen {own} by that.</source>
        <translation>{item} um {lacking} mm verschieben, Richtung {end}, oder {own} um so viel verlängern.</translation>
    </message>
    <message>
        <source>Slide {item} to where nothing of the head stands between its seat and the square edge.</source>
        <translation>{item} dorthin schieben, wo zwischen Sitz und gerader Kante nichts von der Kopfplatte steht.</translation>
    </message>
    <message>
        <source>Slide {item} to where the edge runs on past all of its plate, or choose hardware with its screws nearer to the post.</source>
        <translation>{item} dorthin schieben, wo die Kante an der ganzen Platte entlangläuft, oder eine Mechanik mit Schrauben näher an der Welle wählen.</translation>
    </message>
    <message>
        <source>Slide {item} to where the outline runs along the blank.</source>
        <translation>{item} dorthin schieben, wo der Umriss am Rohling entlangläuft.</translation>
    </message>
    <message>
        <source>Slide {tuner} by {by} to the nut</source>
        <translation>{tuner} um {by} zum Sattel schieben</translation>
    </message>
    <message>
        <source>Slide {tuner} by {by} to the tip</source>
        <translation>{tuner} um {by} zur Spitze schieben</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Schräge</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Schlitz</translation>
    </message>
    <message>
        <source>Slot close to the nut</source>
        <translation>Schlitz nahe am Sattel</translation>
    </message>
    <message>
        <source>Slot crosses itself</source>
        <translation>Schlitz kreuzt sich selbst</translation>
    </message>
    <message>
        <source>Slot leaves the head</source>
        <translation>Schlitz verlässt die Kopfplatte</translation>
    </message>
    <message>
        <source>Slot or outline</source>
        <translation>Schlitz oder Umriss</translation>
    </message>
    <message>
        <source>Slot to nut line</source>
        <translation>Schlitz zu Sattellinie</translation>
    </message>
    <message>
        <source>Slot too shallow for the post</source>
        <translation>Schlitz zu flach für die Welle</translation>
    </message>
    <message>
        <source>Slot {id} is drawn freely: it has no ends and no width, only nodes.</source>
        <translation>Schlitz {id} ist frei gezeichnet: er hat weder Enden noch Breite, nur Knoten.</translation>
    </message>
    <message>
        <source>Slot {id} is {width} wide, so it cannot be shorter than that.</source>
        <translation>Schlitz {id} ist {width} breit, kürzer kann er nicht sein.</translation>
    </message>
    <message>
        <source>Slot {ref}</source>
        <translation>Schlitz {ref}</translation>
    </message>
    <message>
        <source>Slot {ref} has straight walls and no nodes: shape its wall freely first.</source>
        <translation>Schlitz {ref} hat gerade Wände und keine Knoten: zuerst seine Wand frei formen.</translation>
    </message>
    <message>
        <source>Slot, {id}</source>
        <translation>Schlitz, {id}</translation>
    </message>
    <message>
        <source>Slots</source>
        <translation>Schlitze</translation>
    </message>
    <message>
        <source>Slots overlap</source>
        <translation>Schlitze überlappen sich</translation>
    </message>
    <message>
        <source>Slots that overlap become one drawn slot, under the name of the one held first: one opening in the template.</source>
        <translation>Aus Schlitzen, die sich überschneiden, wird ein gezeichneter Schlitz mit dem Namen des zuerst gehaltenen: eine einzige Öffnung in der Schablone.</translation>
    </message>
    <message>
        <source>Slots: {slots}. Holes: {holes}. Loops left out: {other}.</source>
        <translation>Schlitze: {slots}. Bohrungen: {holes}. Ausgelassene Linien: {other}.</translation>
    </message>
    <message>
        <source>Slotted, three a side</source>
        <translation>Geschlitzt, drei je Seite</translation>
    </message>
    <message>
        <source>Slotted, three snags to find</source>
        <translation>Geschlitzt, drei Haken zu finden</translation>
    </message>
    <message>
        <source>Smaller (-)</source>
        <translation>Kleiner (-)</translation>
    </message>
    <message>
        <source>Snag</source>
        <translation>Haken</translation>
    </message>
    <message>
        <source>Snag bef&amp;ore</source>
        <translation>Haken da&amp;vor</translation>
    </message>
    <message>
        <source>Snags</source>
        <translation>Haken</translation>
    </message>
    <message>
        <source>Snags: {counts}.</source>
        <translation>Haken: {counts}.</translation>
    </message>
    <message>
        <source>So it is with {n} more hole there.</source>
        <translation>Ebenso {n} weiteres Loch dort.</translation>
    </message>
    <message>
        <source>So it is with {n} more holes there.</source>
        <translation>Ebenso {n} weitere Löcher dort.</translation>
    </message>
    <message>
        <source>So many tuners, slots, pins and holes are heaped up about {feature} that it would take minutes to tell which of them meet: take out what is there over and over, or lower the margins.</source>
        <translation>Um {feature} herum liegen so viele Mechaniken, Schlitze, Passstifte und Löcher übereinander, dass es Minuten dauern würde zu sagen, welche davon sich treffen: herausnehmen, was dort immer wieder liegt, oder die Mindestabstände verkleinern.</translation>
    </message>
    <message>
        <source>Some lines are drawn with a width: of discs that are filled by it the edge was taken, of all others the middle of the line.</source>
        <translation>Manche Linien sind mit einer Breite gezeichnet: bei Scheiben, die diese ganz füllt, wurde der Rand genommen, bei allen anderen die Mitte der Linie.</translation>
    </message>
    <message>
        <source>Some lines are so tangled that curves were replaced by short straight pieces.</source>
        <translation>Einige Linien sind so verschlungen, dass Kurven durch kurze gerade Stücke ersetzt wurden.</translation>
    </message>
    <message>
        <source>Some shapes are clipped in the drawing; they were read whole.</source>
        <translation>Einige Formen sind in der Zeichnung beschnitten; sie wurden ganz gelesen.</translation>
    </message>
    <message>
        <source>Some shapes are tilted out of the drawing's plane; they were taken as seen from above.</source>
        <translation>Einige Formen sind aus der Zeichenebene gekippt; genommen wie von oben gesehen.</translation>
    </message>
    <message>
        <source>Something inside the program went wrong at “{doing}”.</source>
        <translation>Im Programm ging etwas schief bei „{doing}“.</translation>
    </message>
    <message>
        <source>Something inside the program went wrong.</source>
        <translation>Im Programm ging etwas schief.</translation>
    </message>
    <message>
        <source>Something is in hand: put it down, or back with Esc, and ask again.</source>
        <translation>Es ist etwas in der Hand: Setzen Sie es ab oder mit Esc zurück, und fragen Sie noch einmal.</translation>
    </message>
    <message>
        <source>Something is in hand: put it down, or back with Esc, and press again.</source>
        <translation>Etwas ist in der Hand: Setzen Sie es ab oder mit Esc zurück, und drücken Sie noch einmal.</translation>
    </message>
    <message>
        <source>Something the checks found: it spoils the work, it is tight, or it is a note. Each says what, between which, how much is there, how much is wanted, and what would cure it.</source>
        <translation>Etwas, das die Prüfung gefunden hat: es verdirbt die Arbeit, ist knapp oder ein Hinweis. Jeder sagt was, zwischen welchen, wie viel da ist, wie viel gewünscht ist und was abhilft.</translation>
    </message>
    <message>
        <source>Sort by size</source>
        <translation>Nach Größe ordnen</translation>
    </message>
    <message>
        <source>Sort the rack</source>
        <translation>Den Bestand ordnen</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Space {what} closer by {by}</source>
        <translation>{what} um {by} enger stellen</translation>
    </message>
    <message>
        <source>Space {what} wider by {by}</source>
        <translation>{what} um {by} weiter stellen</translation>
    </message>
    <message>
        <source>Space, with the pen</source>
        <translation>Leertaste, mit dem Stift</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Verteilung</translation>
    </message>
    <message>
        <source>Spacing of the row</source>
        <translation>Abstand in der Reihe</translation>
    </message>
    <message>
        <source>Speed printed on it</source>
        <translation>Aufgedruckte Drehzahl</translation>
    </message>
    <message>
        <source>Speeds, turns a minute</source>
        <translation>Drehzahlen je Minute</translation>
    </message>
    <message>
        <source>Spelching, breakout</source>
        <translation>Ausriss</translation>
    </message>
    <message>
        <source>Spent, {timed} of {of} entries</source>
        <translation>Gebraucht, {timed} von {of} Einträgen</translation>
    </message>
    <message>
        <source>Splinters torn out where a drill leaves the wood.</source>
        <translation>Splitter, die ausreißen, wo ein Bohrer das Holz verlässt.</translation>
    </message>
    <message>
        <source>Spoil board</source>
        <translation>Opferbrett</translation>
    </message>
    <message>
        <source>Spoils the work: {chance}.</source>
        <translation>Verdirbt die Arbeit: {chance}.</translation>
    </message>
    <message>
        <source>Spread along the &amp;edge</source>
        <translation>Entlang der &amp;Kante verteilen</translation>
    </message>
    <message>
        <source>Spread along the edge</source>
        <translation>Entlang der Kante verteilen</translation>
    </message>
    <message>
        <source>Spread on a line</source>
        <translation>Auf einer Linie verteilen</translation>
    </message>
    <message>
        <source>Spread the strings</source>
        <translation>Saiten spreizen</translation>
    </message>
    <message>
        <source>Spread the strings farther in the nut, or set those of a course farther apart.</source>
        <translation>Die Saiten im Sattel weiter auseinandersetzen, oder die eines Chors.</translation>
    </message>
    <message>
        <source>Square to the bore of {tuner} cut {what} into the edge about it, {depth} deep, and try the plate on it.</source>
        <translation>Rechtwinklig zur Bohrung von {tuner} ringsum in die Kante schneiden: {what}, {depth} tief, und die Platte anprobieren.</translation>
    </message>
    <message>
        <source>Squaring a line across from the seat would miss the axis by {miss}.</source>
        <translation>Eine vom Sitz rechtwinklig hinübergezogene Linie würde die Achse um {miss} verfehlen.</translation>
    </message>
    <message>
        <source>St&amp;ronger</source>
        <translation>&amp;Stärker</translation>
    </message>
    <message>
        <source>Stages, tools, drawing, panel, lists.</source>
        <translation>Bereiche, Werkzeuge, Zeichnung, Tafel, Listen.</translation>
    </message>
    <message>
        <source>Stand on a row that has something to strike out first.</source>
        <translation>Zuerst auf eine Zeile gehen, in der etwas zu streichen ist.</translation>
    </message>
    <message>
        <source>Stand on a step of the table first.</source>
        <translation>Zuerst in der Tabelle auf einen Schritt gehen.</translation>
    </message>
    <message>
        <source>Stand on the minutes, or on the tick of a step, that are to be struck out.</source>
        <translation>Auf die Minuten oder das Häkchen eines Schritts gehen, die gestrichen werden sollen.</translation>
    </message>
    <message>
        <source>Stands off</source>
        <translation>Steht ab</translation>
    </message>
    <message>
        <source>Stands out</source>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>Stands out of the base</source>
        <translation>Überstand aus der Fußplatte</translation>
    </message>
    <message>
        <source>Start anew in inches</source>
        <translation>Neu beginnen in Zoll</translation>
    </message>
    <message>
        <source>Start anew in mm</source>
        <translation>Neu beginnen in mm</translation>
    </message>
    <message>
        <source>Start the rack anew</source>
        <translation>Den Bestand neu beginnen</translation>
    </message>
    <message>
        <source>Start the timer</source>
        <translation>Die Uhr starten</translation>
    </message>
    <message>
        <source>Start {opening} nearer the tip by {needed} mm.</source>
        <translation>{opening} um {needed} mm näher an der Spitze beginnen.</translation>
    </message>
    <message>
        <source>Start {opening} nearer to the nut by {needed} mm.</source>
        <translation>{opening} um {needed} mm näher am Sattel beginnen.</translation>
    </message>
    <message>
        <source>Steel core, if wound</source>
        <translation>Stahlkern, wenn umsponnen</translation>
    </message>
    <message>
        <source>Steel post of 5/16 inch through the side, square plate with four small screws, for thick heads.</source>
        <translation>Stahlwelle von 5/16 Zoll durch die Seite, quadratische Platte mit vier kleinen Schrauben, für dicke Kopfplatten.</translation>
    </message>
    <message>
        <source>Steel post of 8 through the side, square plate with four small screws, for thick heads.</source>
        <translation>Stahlwelle von 8 durch die Seite, quadratische Platte mit vier kleinen Schrauben, für dicke Kopfplatten.</translation>
    </message>
    <message>
        <source>Steel post through the side, short plate on the edge, a screw to either side along the edge.</source>
        <translation>Stahlwelle durch die Seite, kurze Platte auf der Kante, je eine Schraube zu beiden Seiten entlang der Kante.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Step after step, and the piece at each of them.</source>
        <translation>Schritt für Schritt, und das Stück bei jedem davon.</translation>
    </message>
    <message>
        <source>Step back.</source>
        <translation>Zurücktreten.</translation>
    </message>
    <message>
        <source>Step between nut and outline</source>
        <translation>Absatz zwischen Sattel und Umriss</translation>
    </message>
    <message>
        <source>Step through the passes; the arrow keys do it too.</source>
        <translation>Durch die Durchgänge gehen; die Pfeiltasten tun es auch.</translation>
    </message>
    <message>
        <source>Step {number}:</source>
        <translation>Schritt {number}:</translation>
    </message>
    <message>
        <source>Step {step}.</source>
        <translation>Schritt {step}.</translation>
    </message>
    <message>
        <source>Stepped bore, 10 from the back and 8.2 at the face; two moulded pins keep the body from turning.</source>
        <translation>Gestufte Bohrung, 10 von hinten und 8,2 an der Vorderseite; zwei angegossene Stifte sichern gegen Drehen.</translation>
    </message>
    <message>
        <source>Stepped bore, 25/64 inch from the back and 21/64 at the face; two moulded pins keep the body from turning.</source>
        <translation>Gestufte Bohrung, 25/64 Zoll von hinten und 21/64 an der Vorderseite; zwei angegossene Stifte sichern gegen Drehen.</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Steps {steps}.</source>
        <translation>Schritte {steps}.</translation>
    </message>
    <message>
        <source>Stick the template to the face on its pins with tape that stays on, and saw {outside} outside the outline.</source>
        <translation>Die Schablone auf ihren Stiften mit haltendem Klebeband auf die Vorderseite kleben, {outside} außerhalb des Umrisses sägen.</translation>
    </message>
    <message>
        <source>Stick the template to the face, on centreline and {line}, with tape that stays on, and saw {outside} outside the outline.</source>
        <translation>Die Schablone auf Mittellinie und {line} mit haltendem Klebeband auf die Vorderseite kleben, {outside} außerhalb des Umrisses sägen.</translation>
    </message>
    <message>
        <source>Still in the folder, of an earlier plan, and no part of this one: {files}. Throw that away before anything is cut from it.</source>
        <translation>Noch im Ordner, von einem früheren Plan und kein Teil von diesem: {files}. Werfen Sie das weg, bevor etwas danach geschnitten wird.</translation>
    </message>
    <message>
        <source>Still to be put in its place: {marks}.</source>
        <translation>Noch zu setzen: {marks}.</translation>
    </message>
    <message>
        <source>Still to be put in their places: {marks}.</source>
        <translation>Noch zu setzen: {marks}.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop and count</source>
        <translation>Anhalten und zählen</translation>
    </message>
    <message>
        <source>Stop at the nut line: the neck goes on behind it.</source>
        <translation>An der Sattellinie aufhören: dahinter geht der Hals weiter.</translation>
    </message>
    <message>
        <source>Stop depth</source>
        <translation>Bohrtiefe</translation>
    </message>
    <message>
        <source>Stop the timer</source>
        <translation>Die Uhr anhalten</translation>
    </message>
    <message>
        <source>Stop the timer without counting</source>
        <translation>Die Uhr anhalten, ohne zu zählen</translation>
    </message>
    <message>
        <source>Stop the writing</source>
        <translation>Ausgabe anhalten</translation>
    </message>
    <message>
        <source>Stop without counting</source>
        <translation>Anhalten, ohne zu zählen</translation>
    </message>
    <message>
        <source>Stop {measured} mm earlier, or use a drill with a shorter point.</source>
        <translation>{measured} mm früher aufhören oder einen Bohrer mit kürzerer Spitze nehmen.</translation>
    </message>
    <message>
        <source>Stop, to full diameter</source>
        <translation>Bohrtiefe, voller Durchmesser</translation>
    </message>
    <message>
        <source>Stop, to the point</source>
        <translation>Bohrtiefe, Spitze</translation>
    </message>
    <message>
        <source>Stopped. Press in the head, or change a number, to try again.</source>
        <translation>Angehalten. In die Kopfplatte klicken oder eine Zahl ändern, um es noch einmal zu versuchen.</translation>
    </message>
    <message>
        <source>Stopped: no file was written.</source>
        <translation>Angehalten: es wurde keine Datei geschrieben.</translation>
    </message>
    <message>
        <source>Stopped: nothing was changed.</source>
        <translation>Angehalten: nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Stopped: the pages on show are older than the last change. They cannot be printed.</source>
        <translation>Angehalten: Die gezeigten Seiten sind älter als die letzte Änderung. Sie können nicht gedruckt werden.</translation>
    </message>
    <message>
        <source>Stopped: the plan on show is older than the last change. Do not work by it.</source>
        <translation>Angehalten: Der gezeigte Plan ist älter als die letzte Änderung. Nicht danach arbeiten.</translation>
    </message>
    <message>
        <source>Stopped: the planned times on show are older than the last change.</source>
        <translation>Angehalten: Die gezeigten geplanten Zeiten sind älter als die letzte Änderung.</translation>
    </message>
    <message>
        <source>Stopped: the search for better places is not finished.</source>
        <translation>Angehalten: Die Suche nach besseren Plätzen ist nicht zu Ende.</translation>
    </message>
    <message>
        <source>Stopped: the steps on show are older than the last change. Do not work by them.</source>
        <translation>Angehalten: Die gezeigten Schritte sind älter als die letzte Änderung. Nicht danach arbeiten.</translation>
    </message>
    <message>
        <source>Stopped: there are no pages of this layout yet.</source>
        <translation>Angehalten: Von diesem Entwurf gibt es noch keine Seiten.</translation>
    </message>
    <message>
        <source>Stopped: there are no planned times of this layout yet.</source>
        <translation>Angehalten: Für diesen Entwurf gibt es noch keine geplanten Zeiten.</translation>
    </message>
    <message>
        <source>Stopped: there is no plan of this layout yet.</source>
        <translation>Angehalten: Für diesen Entwurf gibt es noch keinen Plan.</translation>
    </message>
    <message>
        <source>Stopped: there is no running order of this layout yet.</source>
        <translation>Angehalten: Für diesen Entwurf gibt es noch keine Folge.</translation>
    </message>
    <message>
        <source>Stopped: what must be held is not known.</source>
        <translation>Angehalten: was eingehalten werden muss, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Stops from {low} to {high} will do.</source>
        <translation>Jede Bohrtiefe von {low} bis {high} passt.</translation>
    </message>
    <message>
        <source>Stops that will do</source>
        <translation>Passende Bohrtiefen</translation>
    </message>
    <message>
        <source>Straight</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Straight peg with its gear inside, in a bore of 10 from the back; a threaded collar on the face clamps it, and no screw is drilled for. The button lies behind the post.</source>
        <translation>Gerader Wirbel mit innenliegendem Getriebe, in einer Bohrung von 10 von der Rückseite; ein Gewindering auf der Vorderseite klemmt ihn, für Schrauben wird nichts gebohrt. Der Flügel liegt hinter der Welle.</translation>
    </message>
    <message>
        <source>Straight peg with its gear inside, in a bore of 25/64 inch from the back; a threaded collar on the face clamps it, and no screw is drilled for. The button lies behind the post.</source>
        <translation>Gerader Wirbel mit innenliegendem Getriebe, in einer Bohrung von 25/64 Zoll von der Rückseite; ein Gewindering auf der Vorderseite klemmt ihn, für Schrauben wird nichts gebohrt. Der Flügel liegt hinter der Welle.</translation>
    </message>
    <message>
        <source>Straight, an arc of one radius, or a curve that its two handles pull.</source>
        <translation>Gerade, ein Bogen mit einem Radius oder eine Kurve, die ihre zwei Griffe ziehen.</translation>
    </message>
    <message>
        <source>Strike a cost out</source>
        <translation>Ausgaben streichen</translation>
    </message>
    <message>
        <source>Strike a note out</source>
        <translation>Eine Notiz streichen</translation>
    </message>
    <message>
        <source>Strike this note out</source>
        <translation>Diese Notiz streichen</translation>
    </message>
    <message>
        <source>Strike this row out</source>
        <translation>Diese Zeile streichen</translation>
    </message>
    <message>
        <source>Strikes out the ticks, hours, costs and readings of the piece on the bench, as for the next head of this layout. Notes stay. Save under another name first to keep the record too.</source>
        <translation>Streicht Häkchen, Stunden, Kosten und Messwerte des Stücks auf der Werkbank, etwa für die nächste Kopfplatte nach diesem Entwurf. Notizen bleiben. Vorher unter anderem Namen speichern, um auch die Aufzeichnungen zu behalten.</translation>
    </message>
    <message>
        <source>String</source>
        <translation>Saite</translation>
    </message>
    <message>
        <source>String 1</source>
        <translation>Saite 1</translation>
    </message>
    <message>
        <source>String 1 lies at the bass end.</source>
        <translation>Saite 1 liegt am Bassende.</translation>
    </message>
    <message>
        <source>String 1 lies at the treble end.</source>
        <translation>Saite 1 liegt am Diskantende.</translation>
    </message>
    <message>
        <source>String at a retainer's screw</source>
        <translation>Saite an der Schraube eines Niederhalters</translation>
    </message>
    <message>
        <source>String bends sideways at the nut</source>
        <translation>Saite knickt am Sattel seitlich ab</translation>
    </message>
    <message>
        <source>String bends steeply over the nut</source>
        <translation>Saite knickt steil über den Sattel ab</translation>
    </message>
    <message>
        <source>String bends too little over the nut</source>
        <translation>Saite knickt über dem Sattel zu wenig ab</translation>
    </message>
    <message>
        <source>String beside the nut</source>
        <translation>Saite neben dem Sattel</translation>
    </message>
    <message>
        <source>String beside the slot's wall</source>
        <translation>Saite an der Schlitzwand</translation>
    </message>
    <message>
        <source>String comes off beyond its post</source>
        <translation>Saite läuft jenseits der Welle ab</translation>
    </message>
    <message>
        <source>String hole</source>
        <translation>Saitenloch</translation>
    </message>
    <message>
        <source>String hole in the slot</source>
        <translation>Saitenloch im Schlitz</translation>
    </message>
    <message>
        <source>String hole outside the slot</source>
        <translation>Saitenloch außerhalb des Schlitzes</translation>
    </message>
    <message>
        <source>String hole to slot wall</source>
        <translation>Saitenloch zu Schlitzwand</translation>
    </message>
    <message>
        <source>String on the face</source>
        <translation>Saite auf der Vorderseite</translation>
    </message>
    <message>
        <source>String over the ramp</source>
        <translation>Saite über der Rampe</translation>
    </message>
    <message>
        <source>String over the slot's nut end</source>
        <translation>Saite über dem Sattelende des Schlitzes</translation>
    </message>
    <message>
        <source>String retainer holds nothing</source>
        <translation>Saitenniederhalter hält nichts</translation>
    </message>
    <message>
        <source>String retainer in the way</source>
        <translation>Saitenniederhalter im Weg</translation>
    </message>
    <message>
        <source>String rubs on another post</source>
        <translation>Saite scheuert an anderer Welle</translation>
    </message>
    <message>
        <source>String runs</source>
        <translation>Saite läuft</translation>
    </message>
    <message>
        <source>String runs on the</source>
        <translation>Saite läuft an Seite</translation>
    </message>
    <message>
        <source>String starts beside the wood</source>
        <translation>Saite beginnt neben dem Holz</translation>
    </message>
    <message>
        <source>String to post, wall and ramp</source>
        <translation>Saite zu Welle, Wand und Rampe</translation>
    </message>
    <message>
        <source>String winds on the slot's floor</source>
        <translation>Saite streift den Schlitzgrund</translation>
    </message>
    <message>
        <source>String {id} is the outermost on the bass side: none lies before it to share a course with.</source>
        <translation>Saite {id} ist auf der Bassseite die äußerste: Vor ihr liegt keine, mit der sie einen Chor bilden könnte.</translation>
    </message>
    <message>
        <source>String {string} bends down over the nut by {down:.1f} degrees to {tuner}; beyond {most:g} strings grind the nut and stick in it.</source>
        <translation>Saite {string} knickt auf dem Weg zu {tuner} um {down:.1f} Grad über den Sattel ab; über {most:g} schleifen Saiten den Sattel aus und klemmen in ihm.</translation>
    </message>
    <message>
        <source>String {string} bends down over the nut by {down:.1f} degrees to {tuner}; {least:g} is the least.</source>
        <translation>Saite {string} knickt über dem Sattel zu {tuner} um {down:.1f} Grad ab; {least:g} ist das Mindeste.</translation>
    </message>
    <message>
        <source>String {string} does not press on the nut: it leaves it upwards to {tuner}.</source>
        <translation>Saite {string} drückt nicht auf den Sattel: Sie verlässt ihn nach oben zu {tuner}.</translation>
    </message>
    <message>
        <source>String {string} leaves the nut {angle:.1f} degrees sideways to {tuner}; up to {tolerable:g} is tolerable.</source>
        <translation>Saite {string} knickt am Sattel um {angle:.1f} Grad seitlich ab, zu {tuner}; bis {tolerable:g} geht es noch.</translation>
    </message>
    <message>
        <source>String {string} lies {measured} mm beyond the end of the nut.</source>
        <translation>Saite {string} liegt {measured} mm jenseits des Sattelendes.</translation>
    </message>
    <message>
        <source>String {string} lies {measured} mm in the face {where}.</source>
        <translation>Saite {string} liegt {where} {measured} mm in der Vorderseite.</translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} cuts {measured} mm into the wall of {opening}.</source>
        <translation>Saite {string} schneidet auf dem Weg zu {tuner} um {measured} mm in die Wand von {opening}.</translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} passes {a} mm from the post of {item}; {b} mm wanted.</source>
        <translation>Saite {string} läuft auf dem Weg zu {tuner} in {a} mm Abstand an der Welle von {item} vorbei; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} passes {a} mm from the screw of the retainer on {hole}; {b} mm wanted.</source>
        <translation>Saite {string} läuft auf dem Weg zu {tuner} {a} mm neben der Schraube des Niederhalters auf {hole} vorbei; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} passes {a} mm from the wall of {opening}; {b} mm wanted.</source>
        <translation>Saite {string} läuft auf dem Weg zu {tuner} in {a} mm Abstand an der Wand von {opening} vorbei; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} runs {measured} mm into the post of {item}.</source>
        <translation>Saite {string} läuft auf dem Weg zu {tuner} um {measured} mm in die Welle von {item}.</translation>
    </message>
    <message>
        <source>String {string} on its way to {tuner} runs {measured} mm into the screw of the retainer on {hole}.</source>
        <translation>Saite {string} läuft auf dem Weg zu {tuner} um {measured} mm in die Schraube des Niederhalters auf {hole}.</translation>
    </message>
    <message>
        <source>String {string} passes {a} mm over {what}; {b} mm wanted</source>
        <translation>Saite {string} läuft nur {a} mm frei über: {what}; {b} mm gewünscht</translation>
    </message>
    <message>
        <source>String {string} runs {a} mm above the face {where}; {b} mm wanted.</source>
        <translation>Saite {string} läuft {where} {a} mm über der Vorderseite; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>String {string} runs {measured} mm through {what}</source>
        <translation>Saite {string} schneidet {measured} mm tief ein: {what}</translation>
    </message>
    <message>
        <source>String {string} starts {measured} mm beyond the {side} at the nut line.</source>
        <translation>Saite {string} beginnt an der Sattellinie {measured} mm außerhalb ({side}).</translation>
    </message>
    <message>
        <source>String {string} winds {a} mm above the floor of {opening}; {b} mm wanted.</source>
        <translation>Saite {string} liegt auf der Welle {a} mm über dem Grund von {opening}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>String {string} winds {measured} mm into the floor of {opening}.</source>
        <translation>Saite {string} liegt auf der Welle {measured} mm tief im Grund von {opening}.</translation>
    </message>
    <message>
        <source>String {string}, course {course}</source>
        <translation>Saite {string}, Chor {course}</translation>
    </message>
    <message>
        <source>String {string}: over the post</source>
        <translation>Saite {string}: über die Welle</translation>
    </message>
    <message>
        <source>String {string}: under the post</source>
        <translation>Saite {string}: unter die Welle</translation>
    </message>
    <message>
        <source>String {string}: {side} side</source>
        <translation>Saite {string}: Seite {side}</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Saiten</translation>
    </message>
    <message>
        <source>Strings are counted from the thin side: the first is the outermost at the treble edge, on a left-handed head at the left one, and in pairs strings 1 and 2 are the first course. Lists go from left to right, as the strings lie on the face. Strings that a layout names otherwise keep their names.</source>
        <translation>Saiten zählt man von der dünnen Seite an: Die erste ist die äußerste an der Diskantkante, auf einer Linkshänder-Kopfplatte an der linken Kante, und paarweise bilden die Saiten 1 und 2 den ersten Chor. Listen gehen von links nach rechts, wie die Saiten über der Vorderseite liegen. Saiten, die ein Entwurf anders nennt, behalten ihre Namen.</translation>
    </message>
    <message>
        <source>Strings are made for 2 to {most} posts.</source>
        <translation>Saiten entstehen für 2 bis {most} Wellen.</translation>
    </message>
    <message>
        <source>Strings close together in the nut</source>
        <translation>Saiten im Sattel dicht beieinander</translation>
    </message>
    <message>
        <source>Strings cross or touch</source>
        <translation>Saiten kreuzen oder berühren sich</translation>
    </message>
    <message>
        <source>Strings in pairs</source>
        <translation>Saiten paarweise</translation>
    </message>
    <message>
        <source>Strings in the nut</source>
        <translation>Saiten im Sattel</translation>
    </message>
    <message>
        <source>Strings left-handed: the sides keep their names all the same. Seen on the face with the nut below, the left edge is called bass and the right one treble, and the thick strings run on the treble side.</source>
        <translation>Saiten linkshändig: die Seiten behalten ihre Namen trotzdem. Auf die Vorderseite gesehen, Sattel unten, heißt die linke Kante Bass und die rechte Diskant, und die dicken Saiten laufen auf der Diskantseite.</translation>
    </message>
    <message>
        <source>Strings of one course lie close together and are played as one.</source>
        <translation>Saiten eines Chors liegen dicht beieinander und werden als eine gespielt.</translation>
    </message>
    <message>
        <source>Strings that are played as one, usually a pair close together.</source>
        <translation>Saiten, die als eine gespielt werden, meist ein enges Paar.</translation>
    </message>
    <message>
        <source>Strings that touch between the nut and their posts catch on each other as they are tuned.</source>
        <translation>Saiten, die sich zwischen Sattel und Welle berühren, hängen beim Stimmen aneinander.</translation>
    </message>
    <message>
        <source>Strings under it, above the face</source>
        <translation>Saiten darunter, über der Vorderseite</translation>
    </message>
    <message>
        <source>Strings {one} and {two} come within {a} mm of each other on their way to {tuner} and {other}; {b} mm wanted.</source>
        <translation>Die Saiten {one} und {two} kommen sich auf dem Weg zu {tuner} und {other} bis auf {a} mm nahe; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>Strings {one} and {two} cross on their way to {tuner} and {other} with {a} mm between them; {b} mm wanted.</source>
        <translation>Die Saiten {one} und {two} kreuzen sich auf dem Weg zu {tuner} und {other} mit {a} mm Abstand; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>Strings {one} and {two} cross on their way to {tuner} and {other}, {measured} mm into each other.</source>
        <translation>Die Saiten {one} und {two} kreuzen sich auf dem Weg zu {tuner} und {other} und stecken dabei {measured} mm ineinander.</translation>
    </message>
    <message>
        <source>Strings {one} and {two} cross on their way to {tuner} and {other}.</source>
        <translation>Die Saiten {one} und {two} kreuzen sich auf dem Weg zu {tuner} und {other}.</translation>
    </message>
    <message>
        <source>Strings {one} and {two} lie {a} mm from each other in the nut; {b} mm wanted</source>
        <translation>Die Saiten {one} und {two} liegen im Sattel {a} mm auseinander; {b} mm gewünscht</translation>
    </message>
    <message>
        <source>Strings {one} and {two} lie {measured} mm into each other in the nut</source>
        <translation>Die Saiten {one} und {two} liegen im Sattel {measured} mm ineinander</translation>
    </message>
    <message>
        <source>Strings {one} and {two} run {measured} mm into each other on their way to {tuner} and {other}.</source>
        <translation>Die Saiten {one} und {two} laufen auf dem Weg zu {tuner} und {other} um {measured} mm ineinander.</translation>
    </message>
    <message>
        <source>Strings, tuners and blank: a sound layout to go on from.</source>
        <translation>Saiten, Mechaniken und Rohling: ein stimmiger Entwurf zum Weiterarbeiten.</translation>
    </message>
    <message>
        <source>Symmetric</source>
        <translation>Symmetrisch</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>Table level, a spoil board below; depths from where the drill goes in.</source>
        <translation>Tisch waagrecht, Opferbrett darunter; Tiefen ab dem Eintritt des Bohrers.</translation>
    </message>
    <message>
        <source>Table level; depths from where the drill goes in.</source>
        <translation>Tisch waagrecht; Tiefen ab dem Eintritt des Bohrers.</translation>
    </message>
    <message>
        <source>Table level; the template clamped on centreline and {line}, through it and the blank into a spoil board.</source>
        <translation>Tisch waagrecht; die Schablone auf Mittellinie und {line} geklemmt, durch sie und den Rohling ins Opferbrett.</translation>
    </message>
    <message>
        <source>Table of the running order</source>
        <translation>Tabelle der Folge</translation>
    </message>
    <message>
        <source>Table set</source>
        <translation>Tisch eingestellt</translation>
    </message>
    <message>
        <source>Table tilt</source>
        <translation>Tischneigung</translation>
    </message>
    <message>
        <source>Table tilts to either side</source>
        <translation>Tisch neigt sich bis</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take back what took it out of the drawing; or let wood into it and strike its ticks out in the job book.</source>
        <translation>Zurücknehmen, was ihn aus der Zeichnung genommen hat; oder Holz einsetzen und seine Häkchen im Werkbuch streichen.</translation>
    </message>
    <message>
        <source>Take back what took it out of the drawing; or plug the hole and strike its tick out in the job book.</source>
        <translation>Zurücknehmen, was es aus der Zeichnung genommen hat; oder das Loch verschließen und sein Häkchen im Werkbuch streichen.</translation>
    </message>
    <message>
        <source>Take into the minutes of the next plan</source>
        <translation>In die Minuten des nächsten Plans übernehmen</translation>
    </message>
    <message>
        <source>Take into the shop accuracy</source>
        <translation>In die Werkstattgenauigkeit übernehmen</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>Take it &amp;away</source>
        <translation>W&amp;egnehmen</translation>
    </message>
    <message>
        <source>Take its last node back</source>
        <translation>Ihren letzten Knoten zurücknehmen</translation>
    </message>
    <message>
        <source>Take mine into this layout</source>
        <translation>Meinen in diesen Entwurf nehmen</translation>
    </message>
    <message>
        <source>Take my rack into the layout</source>
        <translation>Meinen Bestand in den Entwurf nehmen</translation>
    </message>
    <message>
        <source>Take off the papers{plug}, pare what the router left, break the edges and sand.</source>
        <translation>Die Papiere abnehmen{plug}, nachstechen, was der Fräser stehen ließ, Kanten brechen und schleifen.</translation>
    </message>
    <message>
        <source>Take out tuners, slots, pins and holes, to put them down elsewhere.</source>
        <translation>Mechaniken, Schlitze, Stifte und Bohrungen herausnehmen, um sie anderswo abzusetzen.</translation>
    </message>
    <message>
        <source>Take the file as it is now</source>
        <translation>Die Datei nehmen, wie sie jetzt ist</translation>
    </message>
    <message>
        <source>Take the last entry back</source>
        <translation>Den letzten Eintrag zurücknehmen</translation>
    </message>
    <message>
        <source>Take the last step back.</source>
        <translation>Den letzten Schritt zurücknehmen.</translation>
    </message>
    <message>
        <source>Take the picture away</source>
        <translation>Das Bild wegnehmen</translation>
    </message>
    <message>
        <source>Take the picture out of the layout.</source>
        <translation>Das Bild aus dem Entwurf nehmen.</translation>
    </message>
    <message>
        <source>Take the readings into the shop accuracy</source>
        <translation>Die Messwerte in die Werkstattgenauigkeit übernehmen</translation>
    </message>
    <message>
        <source>Take the step again.</source>
        <translation>Den Schritt noch einmal tun.</translation>
    </message>
    <message>
        <source>Take theirs</source>
        <translation>Die andere nehmen</translation>
    </message>
    <message>
        <source>Take this outline</source>
        <translation>Diesen Umriss nehmen</translation>
    </message>
    <message>
        <source>Take what would do</source>
        <translation>Nehmen, was ginge</translation>
    </message>
    <message>
        <source>Taken back: {name}</source>
        <translation>Zurückgenommen: {name}</translation>
    </message>
    <message>
        <source>Tangent arc</source>
        <translation>Tangentenbogen</translation>
    </message>
    <message>
        <source>Taper</source>
        <translation>Verjüngung</translation>
    </message>
    <message>
        <source>Template</source>
        <translation>Schablone</translation>
    </message>
    <message>
        <source>Template cannot hold the shape</source>
        <translation>Schablone kann die Form nicht halten</translation>
    </message>
    <message>
        <source>Template does not guide the bit</source>
        <translation>Schablone führt den Fräser nicht</translation>
    </message>
    <message>
        <source>Template for a {tools}: {sizes}.</source>
        <translation>Schablone für {tools}: {sizes}.</translation>
    </message>
    <message>
        <source>Template thickness</source>
        <translation>Schablonendicke</translation>
    </message>
    <message>
        <source>Template {thickness} thick for {follower}</source>
        <translation>Schablone {thickness} dick für {follower}</translation>
    </message>
    <message>
        <source>Template {thick} thick</source>
        <translation>Schablone {thick} dick</translation>
    </message>
    <message>
        <source>Template {thick} thick below the wood</source>
        <translation>Schablone {thick} dick unter dem Holz</translation>
    </message>
    <message>
        <source>Templates (*.dxf *.svg)</source>
        <translation>Schablonen (*.dxf *.svg)</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <source>That is coarse: a picture with more points traces better.</source>
        <translation>Das ist grob: ein Bild mit mehr Punkten lässt sich besser nachziehen.</translation>
    </message>
    <message>
        <source>That set has {chosen} strings, the layout has {strings}.</source>
        <translation>Dieser Satz hat {chosen} Saiten, der Entwurf {strings}.</translation>
    </message>
    <message>
        <source>The DXF file is damaged and cannot be read: open it in the program that drew it and save it again as DXF.</source>
        <translation>Die DXF-Datei ist beschädigt und nicht lesbar: im Programm öffnen, das sie gezeichnet hat, und erneut als DXF speichern.</translation>
    </message>
    <message>
        <source>The Delete key does the same.</source>
        <translation>Die Entf-Taste tut dasselbe.</translation>
    </message>
    <message>
        <source>The SVG file defines entities inside entities, which only hostile files do; it was not read.</source>
        <translation>Die SVG-Datei definiert Entitäten in Entitäten, wie es nur bösartige Dateien tun; sie wurde nicht gelesen.</translation>
    </message>
    <message>
        <source>The SVG file expands to an enormous text through its entities; it was not read.</source>
        <translation>Die SVG-Datei wächst durch ihre Entitäten zu einem riesigen Text; sie wurde nicht gelesen.</translation>
    </message>
    <message>
        <source>The SVG file has more than {most_elements:,} elements: export only the outline, the slots and the holes.</source>
        <translation>Die SVG-Datei hat mehr als {most_elements:,} Elemente: nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The SVG file is damaged at line {line}: open it in the program that drew it and save it again.</source>
        <translation>Die SVG-Datei ist in Zeile {line} beschädigt: im zeichnenden Programm öffnen und erneut speichern.</translation>
    </message>
    <message>
        <source>The SVG file is damaged: open it in the program that drew it and save it again.</source>
        <translation>Die SVG-Datei ist beschädigt: im zeichnenden Programm öffnen und erneut speichern.</translation>
    </message>
    <message>
        <source>The SVG file nests its groups more than {deepest} deep: ungroup them in the program that drew it.</source>
        <translation>Die SVG-Datei verschachtelt ihre Gruppen tiefer als {deepest}: im zeichnenden Programm auflösen.</translation>
    </message>
    <message>
        <source>The SVG file refers to a shape from inside that same shape: expand its clones in the program that drew it.</source>
        <translation>Die SVG-Datei verweist aus einer Form auf diese selbst: die Klone im zeichnenden Programm auflösen.</translation>
    </message>
    <message>
        <source>The SVG file unfolds to more than {most_shapes:,} shapes: export only the outline, the slots and the holes.</source>
        <translation>Die SVG-Datei entfaltet sich zu mehr als {most_shapes:,} Formen: nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The angle of the table for a side bore: how far the edge at its seat is turned from the square edge of the blank.</source>
        <translation>Der Winkel des Tisches für eine Seitenbohrung: wie weit die Kante an ihrem Sitz gegen die gerade Kante des Rohlings gedreht ist.</translation>
    </message>
    <message>
        <source>The arrow keys go back to a step or forward to one; Home is the beginning.</source>
        <translation>Die Pfeiltasten gehen zu einem Schritt zurück oder vor; Pos1 ist der Anfang.</translation>
    </message>
    <message>
        <source>The axis never meets the {surface} of the blank: move the tuner to where the outline faces that edge.</source>
        <translation>Die Achse trifft den Rohling nie ({surface}): die Mechanik dorthin setzen, wo der Umriss zu dieser Kante zeigt.</translation>
    </message>
    <message>
        <source>The axis of {hole} has no mark on the square edge.</source>
        <translation>Die Achse von {hole} hat keinen Anriss auf der geraden Kante.</translation>
    </message>
    <message>
        <source>The axis of {item} never meets the {side} square edge.</source>
        <translation>Die Achse von {item} trifft die gerade Kante nie ({side}).</translation>
    </message>
    <message>
        <source>The bar of a retainer needs its place on the face beside posts and other bars.</source>
        <translation>Ein Saitenniederhalter braucht seinen Platz auf der Vorderseite neben Wellen und anderen Niederhaltern.</translation>
    </message>
    <message>
        <source>The bass side follows the treble side.</source>
        <translation>Die Bassseite folgt der Diskantseite.</translation>
    </message>
    <message>
        <source>The bearing on its tip keeps the cutter off the floor of a blind slot.</source>
        <translation>Der Anlaufring an der Spitze hält die Schneide vom Grund eines nicht durchgehenden Schlitzes fern.</translation>
    </message>
    <message>
        <source>The beginning</source>
        <translation>Der Anfang</translation>
    </message>
    <message>
        <source>The bit {bit} has a bearing without a diameter: enter it in the rack.</source>
        <translation>Der Fräser {bit} hat einen Anlaufring ohne Durchmesser: im Bestand eintragen.</translation>
    </message>
    <message>
        <source>The bits, bushes, drills and machines that you own, described by their dimensions. Plans use nothing else.</source>
        <translation>Die Fräser, Hülsen, Bohrer und Maschinen, die Sie haben, durch Maße beschrieben. Die Pläne verwenden nichts anderes.</translation>
    </message>
    <message>
        <source>The blank goes on beyond this paper.</source>
        <translation>Der Rohling geht über dieses Papier hinaus.</translation>
    </message>
    <message>
        <source>The blank has to hold the whole outline and more.</source>
        <translation>Der Rohling muss den ganzen Umriss und mehr enthalten.</translation>
    </message>
    <message>
        <source>The blank is only {a} mm larger than the outline at the {side}; {b} mm wanted.</source>
        <translation>Der Rohling ist nur {a} mm größer als der Umriss ({side}); {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The blank is {thickness} mm thick, which no head is: most are {least} to {most} mm.</source>
        <translation>Der Rohling ist {thickness} mm dick; so dick ist keine Kopfplatte: Die meisten haben {least} bis {most} mm.</translation>
    </message>
    <message>
        <source>The blank turned over, so that the router reaches from the back what it cannot reach from the face. The template goes over with it on the same two pins.</source>
        <translation>Der gewendete Rohling, damit die Oberfräse von hinten erreicht, was sie von vorn nicht erreicht. Die Schablone wandert auf denselben zwei Stiften mit.</translation>
    </message>
    <message>
        <source>The block '{clean}' contains itself: break it up in the program that drew it, and export again.</source>
        <translation>Der Block '{clean}' enthält sich selbst: im zeichnenden Programm auflösen und erneut ausgeben.</translation>
    </message>
    <message>
        <source>The block '{clean}' is clipped in the drawing; it was read whole.</source>
        <translation>Der Block '{clean}' ist in der Zeichnung beschnitten; er wurde ganz gelesen.</translation>
    </message>
    <message>
        <source>The block '{clean}' lies in another file and was not read: bind it in the program that drew it.</source>
        <translation>Der Block '{clean}' liegt in einer anderen Datei und wurde nicht gelesen: im zeichnenden Programm einbinden.</translation>
    </message>
    <message>
        <source>The block under one side of a board {base} long.</source>
        <translation>Der Klotz unter einer Seite eines {base} langen Bretts.</translation>
    </message>
    <message>
        <source>The blocks of the drawing repeat to more than {most_copies:,} shapes that the file does not write out: export only the outline, the slots and the holes.</source>
        <translation>Die Blöcke der Zeichnung wiederholen sich zu mehr als {most_copies:,} Formen, die nicht in der Datei stehen: nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The board alone, with openings and pin holes, as DXF or SVG at full size.</source>
        <translation>Nur das Brett mit Öffnungen und Stiftlöchern, als DXF oder SVG in voller Größe.</translation>
    </message>
    <message>
        <source>The bore for {item} leaves {a} mm of the square edge to the {end} end of the blank; {b} mm wanted.</source>
        <translation>Die Bohrung für {item} lässt von der geraden Kante {a} mm bis zum Ende des Rohlings ({end}); {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The bore for {item} leaves {a} mm of {ear} to its {end} end; {b} mm wanted.</source>
        <translation>Die Bohrung für {item} lässt {a} mm von {ear} bis zu dessen Ende ({end}); gewünscht sind {b} mm.</translation>
    </message>
    <message>
        <source>The bore for {item} runs {measured} mm past the {end} end of the square edge.</source>
        <translation>Die Bohrung für {item} reicht {measured} mm über die gerade Kante hinaus ({end}).</translation>
    </message>
    <message>
        <source>The bore for {item} runs {measured} mm past the {end} end of {ear}: the square edge is not there.</source>
        <translation>Die Bohrung für {item} reicht {measured} mm über das Ende von {ear} hinaus ({end}): dort ist keine gerade Kante.</translation>
    </message>
    <message>
        <source>The bore shows where the flat goes and how it lies.</source>
        <translation>Die Bohrung zeigt, wohin die Fläche kommt und wie sie liegt.</translation>
    </message>
    <message>
        <source>The bore takes {pin} away, and the template no longer finds its place.</source>
        <translation>Die Bohrung nimmt {pin} mit, und die Schablone findet ihren Platz nicht mehr.</translation>
    </message>
    <message>
        <source>The button of {item} clears the edge by {a} mm; {b} mm is wanted for the fingers.</source>
        <translation>Flügel von {item}: nur {a} mm frei bis zur Kante; {b} mm für die Finger gewünscht.</translation>
    </message>
    <message>
        <source>The button of {item} lies {measured} mm behind the head.</source>
        <translation>Der Flügel von {item} liegt {measured} mm hinter der Kopfplatte.</translation>
    </message>
    <message>
        <source>The button of {item} reaches {measured} mm behind the wood and cannot turn there.</source>
        <translation>Der Flügel von {item} ragt {measured} mm hinter das Holz und lässt sich dort nicht drehen.</translation>
    </message>
    <message>
        <source>The button of {item} strikes the edge by {measured} mm as it turns.</source>
        <translation>Der Flügel von {item} stößt beim Drehen an die Kante, {measured} mm zu weit.</translation>
    </message>
    <message>
        <source>The buttons of {one} and {two} pass {a} mm apart; {b} mm wanted for the fingers.</source>
        <translation>Die Flügel von {one} und {two} drehen mit {a} mm Abstand aneinander vorbei; {b} mm für die Finger gewünscht.</translation>
    </message>
    <message>
        <source>The buttons of {one} and {two} strike each other by {measured} mm as they turn.</source>
        <translation>Die Flügel von {one} und {two} überschneiden sich beim Drehen um {measured} mm.</translation>
    </message>
    <message>
        <source>The chances now reckon with what you measured; one undo takes it back.</source>
        <translation>Die Aussichten rechnen nun mit Ihren Messwerten; einmal „Rückgängig“ nimmt es zurück.</translation>
    </message>
    <message>
        <source>The choice</source>
        <translation>Die Wahl</translation>
    </message>
    <message>
        <source>The clock of this computer was set back while the timer ran: nothing is counted. Type the minutes.</source>
        <translation>Die Uhr des Rechners wurde inzwischen zurückgestellt: Es ist nichts gezählt. Die Minuten eintippen.</translation>
    </message>
    <message>
        <source>The clones of the SVG file repeat to more than {most_copies:,} shapes that it does not write out: export only the outline, the slots and the holes.</source>
        <translation>Die Klone der SVG-Datei wiederholen sich zu mehr als {most_copies:,} Formen, die nicht in ihr stehen: nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The core between the waste holes comes loose under the cutter and is thrown.</source>
        <translation>Der Kern zwischen den Räumbohrungen löst sich unter dem Fräser und wird weggeschleudert.</translation>
    </message>
    <message>
        <source>The corrections of your printers in {path} cannot be read: {why}.</source>
        <translation>Die Korrekturen Ihrer Drucker in {path} sind nicht lesbar: {why}.</translation>
    </message>
    <message>
        <source>The cutter has to pass through its guide bush.</source>
        <translation>Der Fräser muss durch seine Kopierhülse passen.</translation>
    </message>
    <message>
        <source>The cutter leaves wood in corners to be pared by hand.</source>
        <translation>Der Fräser lässt in Ecken Holz zum Nachstechen stehen.</translation>
    </message>
    <message>
        <source>The cutter nearly fills the slot and cuts both walls at once: hold the router firmly and go slowly.</source>
        <translation>Der Fräser füllt den Schlitz fast und schneidet beide Wände zugleich: die Oberfräse gut festhalten und langsam führen.</translation>
    </message>
    <message>
        <source>The cutter would have to clear the whole waste outside the outline: it grabs, and tears out where the grain climbs.</source>
        <translation>Der Fräser müsste den ganzen Abfall außerhalb des Umrisses räumen: er hakt und reißt aus, wo die Faser ansteigt.</translation>
    </message>
    <message>
        <source>The cutter would have to clear {slot} in full wood: it grabs, burns and bends.</source>
        <translation>Der Fräser müsste {slot} im vollen Holz räumen: er hakt, brennt und biegt sich.</translation>
    </message>
    <message>
        <source>The data of some shapes is damaged; they were drawn up to the damage, so compare the outline with the drawing.</source>
        <translation>Die Daten einiger Formen sind beschädigt; sie wurden bis zum Schaden gezeichnet, den Umriss mit der Zeichnung vergleichen.</translation>
    </message>
    <message>
        <source>The dimensions that this tuner has. Change them on the Tuners stage while nothing is held.</source>
        <translation>Die Maße dieser Mechanik. Ändern im Bereich Mechaniken, wenn nichts gehalten ist.</translation>
    </message>
    <message>
        <source>The disk does not answer.</source>
        <translation>Der Datenträger antwortet nicht.</translation>
    </message>
    <message>
        <source>The disk does not confirm that it keeps what is written in {folder}: {why}.</source>
        <translation>Der Datenträger bestätigt nicht, dass er behält, was in {folder} geschrieben wird: {why}.</translation>
    </message>
    <message>
        <source>The drawing cannot be read: {error}</source>
        <translation>Die Zeichnung ist nicht lesbar: {error}</translation>
    </message>
    <message>
        <source>The drawing could not be read: the reader stopped without an answer; save the drawing again in the program that drew it.</source>
        <translation>Die Zeichnung war nicht lesbar: das Lesen endete ohne Antwort; im zeichnenden Programm erneut speichern.</translation>
    </message>
    <message>
        <source>The drawing does not say its unit; as {unit} it would be {sized}.</source>
        <translation>Die Zeichnung nennt ihre Einheit nicht; als {unit} wäre sie {sized}.</translation>
    </message>
    <message>
        <source>The drawing does not say its unit; {unit} was guessed from its size, {sized}.</source>
        <translation>Die Zeichnung nennt ihre Einheit nicht; {unit} wurde aus der Größe geraten, {sized}.</translation>
    </message>
    <message>
        <source>The drawing does not state its size; with {n} units to the inch its page is a usual sheet, which makes it {sized}. In {one} it would be {first}, in {other} {second}.</source>
        <translation>Die Zeichnung gibt ihre Größe nicht an; mit {n} Einheiten je Zoll ist ihre Seite ein übliches Blatt, damit misst sie {sized}. In {one} wäre sie {first} groß, in {other} {second}.</translation>
    </message>
    <message>
        <source>The drawing does not state its size; {n} units to the inch were assumed, which makes it {sized}. Some programs write fewer: in {one} it is {first}, in {other} {second}.</source>
        <translation>Die Zeichnung gibt ihre Größe nicht an; {n} Einheiten je Zoll wurden angenommen, damit misst sie {sized}. Manche Programme schreiben weniger: in {one} misst sie {first}, in {other} {second}.</translation>
    </message>
    <message>
        <source>The drawing has more than {most:,} points: simplify its lines in the program that drew it, or export only the outline, the slots and the holes.</source>
        <translation>Die Zeichnung hat mehr als {most:,} Punkte: ihre Linien im Zeichenprogramm vereinfachen oder nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The drawing has no closed outline: its lines do not close.</source>
        <translation>Die Zeichnung hat keinen geschlossenen Umriss: ihre Linien schließen nicht.</translation>
    </message>
    <message>
        <source>The drawing has no closed outline: loose ends are {size:.3f} mm apart at ({x:.2f}, {y:.2f}) mm and at {n} more place; join them in the drawing.</source>
        <translation>Die Zeichnung hat keinen geschlossenen Umriss: lose Enden liegen {size:.3f} mm auseinander bei ({x:.2f}; {y:.2f}) mm und an {n} weiteren Stelle; in der Zeichnung verbinden.</translation>
    </message>
    <message>
        <source>The drawing has no closed outline: loose ends are {size:.3f} mm apart at ({x:.2f}, {y:.2f}) mm and at {n} more places; join them in the drawing.</source>
        <translation>Die Zeichnung hat keinen geschlossenen Umriss: lose Enden liegen {size:.3f} mm auseinander bei ({x:.2f}; {y:.2f}) mm und an {n} weiteren Stellen; in der Zeichnung verbinden.</translation>
    </message>
    <message>
        <source>The drawing has no closed outline: loose ends are {size:.3f} mm apart at ({x:.2f}, {y:.2f}) mm; join them in the drawing.</source>
        <translation>Die Zeichnung hat keinen geschlossenen Umriss: lose Enden liegen {size:.3f} mm auseinander bei ({x:.2f}; {y:.2f}) mm; in der Zeichnung verbinden.</translation>
    </message>
    <message>
        <source>The drawing has no hole any more for “{title}”, which is drilled {was} (job book).</source>
        <translation>Die Zeichnung hat kein Loch mehr für „{title}“, das {was} gebohrt ist (Werkbuch).</translation>
    </message>
    <message>
        <source>The drawing has {n} head of that size: leave --head out.</source>
        <translation>Die Zeichnung hat {n} Kopfplatte dieser Größe: --head weglassen.</translation>
    </message>
    <message>
        <source>The drawing has {n} heads of one size, as from face and back: number {k} from the left is taken.</source>
        <translation>Die Zeichnung hat {n} Kopfplatten von einer Größe, wie von Vorder- und Rückseite: Nummer {k} von links wird genommen.</translation>
    </message>
    <message>
        <source>The drawing has {n} heads of that size: give --head a number up to that.</source>
        <translation>Die Zeichnung hat {n} Kopfplatten dieser Größe: bei --head eine Zahl bis dahin angeben.</translation>
    </message>
    <message>
        <source>The drawing holds no lines or curves that can be used, only {skipped}: export the outline as lines, arcs or curves.</source>
        <translation>Die Zeichnung enthält keine brauchbaren Linien oder Kurven, nur {skipped}: den Umriss als Linien, Bögen oder Kurven ausgeben.</translation>
    </message>
    <message>
        <source>The drawing holds no lines, only filled areas: their edges were taken.</source>
        <translation>Die Zeichnung enthält keine Linien, nur gefüllte Flächen: deren Ränder wurden genommen.</translation>
    </message>
    <message>
        <source>The drawing is empty: it holds no lines or curves.</source>
        <translation>Die Zeichnung ist leer: weder Linien noch Kurven.</translation>
    </message>
    <message>
        <source>The drawing is nested too deeply to be read: ungroup it in the program that drew it.</source>
        <translation>Die Zeichnung ist zu tief verschachtelt: im zeichnenden Programm Gruppen auflösen.</translation>
    </message>
    <message>
        <source>The drawing is {sized} and its curves are too long to be worked out: set its unit to the one it was drawn in, or export only the outline, the slots and the holes.</source>
        <translation>Die Zeichnung ist {sized} groß, und ihre Kurven sind zu lang, um ausgewertet zu werden: die Einheit auf die stellen, in der gezeichnet wurde, oder nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The drawing lay {x:.4g} mm from its origin; it was moved by ({dx:.0f}, {dy:.0f}) mm.</source>
        <translation>Die Zeichnung lag {x:.4g} mm von ihrem Ursprung; sie wurde um ({dx:.0f}; {dy:.0f}) mm verschoben.</translation>
    </message>
    <message>
        <source>The drawing needs more than {memory_mb} MB of memory to read: export only the outline, the slots and the holes.</source>
        <translation>Das Lesen der Zeichnung braucht mehr als {memory_mb} MB Speicher: nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The drawing says that its unit is {unit}, which makes it {sized}: no headstock is that size.</source>
        <translation>Die Zeichnung nennt als Einheit {unit}, das ergibt {sized}: so groß ist keine Kopfplatte.</translation>
    </message>
    <message>
        <source>The drawing says that its unit is {unit}, which makes it {sized}: no headstock is that size. As {other} it is {size}.</source>
        <translation>Die Zeichnung nennt als Einheit {unit}, das ergibt {sized}: so groß ist keine Kopfplatte. Als {other} misst sie {size}.</translation>
    </message>
    <message>
        <source>The drawing says {scale}, and was read as it is drawn: at that scale the outline measures {larger}.</source>
        <translation>Die Zeichnung nennt {scale} und wurde gelesen, wie sie gezeichnet ist: in diesem Maßstab misst der Umriss {larger}.</translation>
    </message>
    <message>
        <source>The drawing stays as it is, for it is not seen here: undo and redo its steps on another stage. What was written into the book is taken back by “Take the last entry back”.</source>
        <translation>Die Zeichnung bleibt, wie sie ist, denn sie ist hier nicht zu sehen: Ihre Schritte in einem anderen Bereich rückgängig machen oder wiederholen. Was ins Werkbuch geschrieben wurde, nimmt „Den letzten Eintrag zurücknehmen“ zurück.</translation>
    </message>
    <message>
        <source>The drawing stays upright, and its slanted edge becomes the nut line.</source>
        <translation>Die Zeichnung bleibt aufrecht, und ihre schräge Kante wird die Sattellinie.</translation>
    </message>
    <message>
        <source>The drawing takes longer than {seconds:g} seconds to read: export only the outline, the slots and the holes.</source>
        <translation>Das Lesen der Zeichnung dauert länger als {seconds:g} Sekunden: nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The drawing tells no depth of it: what is there already counts as through until you give the depth that you measured.</source>
        <translation>Die Zeichnung nennt dafür keine Tiefe: was schon da ist, gilt als durchgehend, bis Sie die gemessene Tiefe angeben.</translation>
    </message>
    <message>
        <source>The drawing unfolds to more than {most_shapes:,} shapes: export only the outline, the slots and the holes.</source>
        <translation>Die Zeichnung entfaltet sich zu mehr als {most_shapes:,} Formen: nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The drill does not reach the bottom of the hole.</source>
        <translation>Der Bohrer erreicht den Grund der Bohrung nicht.</translation>
    </message>
    <message>
        <source>The drill for {item} enters the square edge at {tilt:.1f} degrees and would skate.</source>
        <translation>Der Bohrer für {item} trifft unter {tilt:.1f} Grad auf die gerade Kante und würde wegrutschen.</translation>
    </message>
    <message>
        <source>The drill meets the edge at {tilt} and skates: use a guide block or start with a short, stiff drill.</source>
        <translation>Der Bohrer trifft unter {tilt} auf die Kante und rutscht weg: einen Führungsblock verwenden oder mit einem kurzen, steifen Bohrer beginnen.</translation>
    </message>
    <message>
        <source>The drill press has to be reset during the hole.</source>
        <translation>Die Bohrmaschine muss während der Bohrung nachgesetzt werden.</translation>
    </message>
    <message>
        <source>The drill would break out into {slot}, open by then: no wood stands behind the wall, and past it the drill wanders.</source>
        <translation>Der Bohrer würde zu {slot} hin ausreißen, der dann schon offen ist: hinter der Wand steht kein Holz, und danach verläuft er.</translation>
    </message>
    <message>
        <source>The drill {drill} makes it {by} narrower than the {diameter} asked for: try the part in scrap first.</source>
        <translation>Der Bohrer {drill} macht sie um {by} enger als die verlangten {diameter}: das Teil zuerst in einem Reststück probieren.</translation>
    </message>
    <message>
        <source>The drill {drill} makes it {by} wider than the {diameter} asked for: try the part in scrap first.</source>
        <translation>Der Bohrer {drill} macht sie um {by} weiter als die verlangten {diameter}: das Teil zuerst in einem Reststück probieren.</translation>
    </message>
    <message>
        <source>The drill's point for {item} goes {measured} mm into the inner wall of {own}.</source>
        <translation>Die Bohrerspitze für {item} dringt {measured} mm in die Innenwand von {own} ein.</translation>
    </message>
    <message>
        <source>The drill's point runs ahead of its full diameter.</source>
        <translation>Die Bohrerspitze läuft dem vollen Durchmesser voraus.</translation>
    </message>
    <message>
        <source>The edge begins and ends on one point, so it makes no arc.</source>
        <translation>Die Kante beginnt und endet an einem Punkt, das ergibt keinen Bogen.</translation>
    </message>
    <message>
        <source>The edge begins and ends on one point, so its length has no direction.</source>
        <translation>Die Kante beginnt und endet an einem Punkt, ihre Länge hat keine Richtung.</translation>
    </message>
    <message>
        <source>The edge ends before {of} has slid so far.</source>
        <translation>Die Kante endet, bevor {of} so weit verschoben ist.</translation>
    </message>
    <message>
        <source>The edge of side tuner {id} does not come to {height} along.</source>
        <translation>Die Kante von Seitenmechanik {id} reicht nicht bis {height} längs.</translation>
    </message>
    <message>
        <source>The edge that the bore starts from.</source>
        <translation>Die Kante, an der die Bohrung beginnt.</translation>
    </message>
    <message>
        <source>The edge that the follower rubs on.</source>
        <translation>Der Rand, an dem die Führung anliegt.</translation>
    </message>
    <message>
        <source>The edge that the piece is glued to.</source>
        <translation>Die Kante, an die das Stück geleimt wird.</translation>
    </message>
    <message>
        <source>The edge under the plate of {id} is straight: it needs no flat.</source>
        <translation>Die Kante unter der Platte von {id} ist gerade: sie braucht keine Fläche.</translation>
    </message>
    <message>
        <source>The edges fold back on themselves here, so no arc fits between them.</source>
        <translation>Die Kanten laufen hier in sich zurück, dazwischen passt kein Bogen.</translation>
    </message>
    <message>
        <source>The edges meet without a corner here, so there is nothing to round.</source>
        <translation>Die Kanten treffen sich hier ohne Ecke, es gibt nichts zu runden.</translation>
    </message>
    <message>
        <source>The edges round this place are farther apart than those of any head: press inside the head, or shift the level of grey; or the picture is laid larger than it is, so lay it anew.</source>
        <translation>Die Kanten um diese Stelle liegen weiter auseinander als die irgendeiner Kopfplatte: innerhalb der Kopfplatte klicken oder den Grauwert verschieben; oder das Bild ist größer hinterlegt, als es ist, dann erneut hinter die Zeichnung legen.</translation>
    </message>
    <message>
        <source>The ends are {apart} apart, so the radius must be {half} or more.</source>
        <translation>Die Enden liegen {apart} auseinander, der Radius muss mindestens {half} sein.</translation>
    </message>
    <message>
        <source>The ends of the nut lie on one another: put them at either side of the neck.</source>
        <translation>Die Enden des Sattels liegen aufeinander: zu beiden Seiten des Halses setzen.</translation>
    </message>
    <message>
        <source>The entry that is chosen</source>
        <translation>Der gewählte Eintrag</translation>
    </message>
    <message>
        <source>The face in the middle and both square edges folded flat beside it, exactly as the wrap paper is printed.</source>
        <translation>Die Vorderseite in der Mitte, beide geraden Kanten flach daneben geklappt, genau wie der Hüllbogen gedruckt wird.</translation>
    </message>
    <message>
        <source>The feather edge of the scarf joint on the back meets {some}.</source>
        <translation>Die auslaufende Kante der Schäftung auf der Rückseite trifft auf {some}.</translation>
    </message>
    <message>
        <source>The feather edge of the scarf joint on the face meets {some}.</source>
        <translation>Die auslaufende Kante der Schäftung auf der Vorderseite trifft auf {some}.</translation>
    </message>
    <message>
        <source>The feather edge of the scarf joint runs {measured} mm inside the {name}.</source>
        <translation>Die auslaufende Kante der Schäftung läuft {measured} mm weit durch: {name}.</translation>
    </message>
    <message>
        <source>The file '{fspath}' cannot be read: {why}.</source>
        <translation>Die Datei '{fspath}' ist nicht lesbar: {why}.</translation>
    </message>
    <message>
        <source>The file ends before its end mark: something may be missing, so compare the outline with the drawing.</source>
        <translation>Die Datei endet vor ihrer Endmarke: vielleicht fehlt etwas, den Umriss mit der Zeichnung vergleichen.</translation>
    </message>
    <message>
        <source>The file holds neither a DXF nor an SVG drawing, only binary data: export DXF or SVG from the program that drew it.</source>
        <translation>Die Datei enthält weder eine DXF- noch eine SVG-Zeichnung, nur Binärdaten: im zeichnenden Programm als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file holds neither a DXF nor an SVG drawing: export DXF or SVG from the program that drew it.</source>
        <translation>Die Datei enthält weder eine DXF- noch eine SVG-Zeichnung: im zeichnenden Programm als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a 7z archive; unpack it and import the drawing inside.</source>
        <translation>Die Datei ist ein 7z-Archiv; auspacken und die Zeichnung darin einlesen.</translation>
    </message>
    <message>
        <source>The file is a DWG drawing, which cannot be read: save it as DXF and import that.</source>
        <translation>Die Datei ist eine DWG-Zeichnung, die nicht lesbar ist: als DXF speichern und diese einlesen.</translation>
    </message>
    <message>
        <source>The file is a PDF; export DXF or SVG from the program that drew it.</source>
        <translation>Die Datei ist ein PDF; im zeichnenden Programm als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a PostScript page; export DXF or SVG from the program that drew it.</source>
        <translation>Die Datei ist eine PostScript-Seite; im zeichnenden Programm als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a picture (BMP), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation>Die Datei ist ein Bild (BMP), keine Zeichnung; im zeichnenden Programm als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a picture (GIF), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation>Die Datei ist ein Bild (GIF), keine Zeichnung; im zeichnenden Programm als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a picture (JPEG), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation>Die Datei ist ein Bild (JPEG), keine Zeichnung; im zeichnenden Programm als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a picture (PNG), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation>Die Datei ist ein Bild (PNG), keine Zeichnung; im zeichnenden Programm als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a picture (TIFF), not a drawing; export DXF or SVG from the program that drew it.</source>
        <translation>Die Datei ist ein Bild (TIFF), keine Zeichnung; im zeichnenden Programm als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a program, not a drawing.</source>
        <translation>Die Datei ist ein Programm, keine Zeichnung.</translation>
    </message>
    <message>
        <source>The file is a rar archive; unpack it and import the drawing inside.</source>
        <translation>Die Datei ist ein rar-Archiv; auspacken und die Zeichnung darin einlesen.</translation>
    </message>
    <message>
        <source>The file is a solid model (STEP); export the flat outline as DXF or SVG.</source>
        <translation>Die Datei ist ein Volumenmodell (STEP); den ebenen Umriss als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a solid model (STL); export the flat outline as DXF or SVG.</source>
        <translation>Die Datei ist ein Volumenmodell (STL); den ebenen Umriss als DXF oder SVG ausgeben.</translation>
    </message>
    <message>
        <source>The file is a zip archive; unpack it and import the drawing inside.</source>
        <translation>Die Datei ist ein zip-Archiv; auspacken und die Zeichnung darin einlesen.</translation>
    </message>
    <message>
        <source>The file is an empty zip archive.</source>
        <translation>Die Datei ist ein leeres zip-Archiv.</translation>
    </message>
    <message>
        <source>The file is an office document, not a drawing.</source>
        <translation>Die Datei ist ein Bürodokument, keine Zeichnung.</translation>
    </message>
    <message>
        <source>The file is compressed (bzip2); unpack it and import what is inside.</source>
        <translation>Die Datei ist gepackt (bzip2); auspacken und den Inhalt einlesen.</translation>
    </message>
    <message>
        <source>The file is compressed (gzip); unpack it and import what is inside.</source>
        <translation>Die Datei ist gepackt (gzip); auspacken und den Inhalt einlesen.</translation>
    </message>
    <message>
        <source>The file is compressed (xz); unpack it and import what is inside.</source>
        <translation>Die Datei ist gepackt (xz); auspacken und den Inhalt einlesen.</translation>
    </message>
    <message>
        <source>The file is compressed (zstd); unpack it and import what is inside.</source>
        <translation>Die Datei ist gepackt (zstd); auspacken und den Inhalt einlesen.</translation>
    </message>
    <message>
        <source>The file is empty: save the drawing again and import that.</source>
        <translation>Die Datei ist leer: die Zeichnung erneut speichern und diese einlesen.</translation>
    </message>
    <message>
        <source>The file is not an SVG drawing: its first element is &lt;{tag}&gt;.</source>
        <translation>Die Datei ist keine SVG-Zeichnung: ihr erstes Element ist &lt;{tag}&gt;.</translation>
    </message>
    <message>
        <source>The file is {size:.0f} MB, over the limit of {most_bytes:.0f} MB: export only the outline, the slots and the holes.</source>
        <translation>Die Datei hat {size:.0f} MB, über der Grenze von {most_bytes:.0f} MB: nur Umriss, Schlitze und Bohrungen ausgeben.</translation>
    </message>
    <message>
        <source>The file was damaged and had to be mended in {n} place: compare the outline with the drawing.</source>
        <translation>Die Datei war beschädigt und musste an {n} Stelle ausgebessert werden: den Umriss mit der Zeichnung vergleichen.</translation>
    </message>
    <message>
        <source>The file was damaged and had to be mended in {n} places: compare the outline with the drawing.</source>
        <translation>Die Datei war beschädigt und musste an {n} Stellen ausgebessert werden: den Umriss mit der Zeichnung vergleichen.</translation>
    </message>
    <message>
        <source>The file was damaged and had to be mended: compare the outline with the drawing.</source>
        <translation>Die Datei war beschädigt und musste ausgebessert werden: den Umriss mit der Zeichnung vergleichen.</translation>
    </message>
    <message>
        <source>The first and the last tuner stand on one place: move them apart before making a row.</source>
        <translation>Die erste und die letzte Mechanik stehen am selben Ort: vor dem Bilden einer Reihe auseinandersetzen.</translation>
    </message>
    <message>
        <source>The flat for {item} cuts into {opening}.</source>
        <translation>Die Fläche für {item} schneidet in {opening}.</translation>
    </message>
    <message>
        <source>The flat for {item} is {a} mm, too small for its plate, which takes {b} mm.</source>
        <translation>Die Fläche für {item} misst {a} mm, zu klein für ihre Platte, die {b} mm braucht.</translation>
    </message>
    <message>
        <source>The folder cannot be opened: {why}.</source>
        <translation>Der Ordner lässt sich nicht öffnen: {why}.</translation>
    </message>
    <message>
        <source>The folder {out_dir} cannot be made: {why}.</source>
        <translation>Der Ordner {out_dir} lässt sich nicht anlegen: {why}.</translation>
    </message>
    <message>
        <source>The folder {parent} for your printers cannot be made: {why}.</source>
        <translation>Der Ordner {parent} für Ihre Drucker lässt sich nicht anlegen: {why}.</translation>
    </message>
    <message>
        <source>The folder {parent} for your rack cannot be made: {why}.</source>
        <translation>Der Ordner {parent} für Ihren Bestand lässt sich nicht anlegen: {why}.</translation>
    </message>
    <message>
        <source>The follower has to rub on the template at every depth.</source>
        <translation>Die Führung muss in jeder Tiefe an der Schablone anliegen.</translation>
    </message>
    <message>
        <source>The follower rides over wood thinner than it can follow.</source>
        <translation>Die Führung fährt über Holz, das zu dünn zum Folgen ist.</translation>
    </message>
    <message>
        <source>The four corners do not run round a rectangle: put them in order, one at each corner.</source>
        <translation>Die vier Ecken laufen nicht um ein Rechteck: der Reihe nach setzen, je eine an jede Ecke.</translation>
    </message>
    <message>
        <source>The gap to close has to be above 0 and at most 5 mm: {join:g} does not do.</source>
        <translation>Die zu schließende Lücke muss über 0 und höchstens 5 mm sein: {join:g} geht nicht.</translation>
    </message>
    <message>
        <source>The glue line of {ear} is crossed by the bores of {crossing}.</source>
        <translation>Die Leimfuge von {ear} wird von Bohrungen gekreuzt: {crossing}.</translation>
    </message>
    <message>
        <source>The glue line of {ear} runs {measured} mm inside the {name}.</source>
        <translation>Die Leimfuge von {ear} verläuft {measured} mm innerhalb: {name}.</translation>
    </message>
    <message>
        <source>The handle that pulls the curve as it comes to the next node, from the centreline.</source>
        <translation>Der Griff, der die Kurve vor dem nächsten Knoten zieht, von der Mittellinie.</translation>
    </message>
    <message>
        <source>The handle that pulls the curve as it comes to the next node, from the nut line.</source>
        <translation>Der Griff, der die Kurve vor dem nächsten Knoten zieht, von der Sattellinie.</translation>
    </message>
    <message>
        <source>The handle that pulls the curve as it leaves this node, from the centreline.</source>
        <translation>Der Griff, der die Kurve nach diesem Knoten zieht, von der Mittellinie.</translation>
    </message>
    <message>
        <source>The handle that pulls the curve as it leaves this node, from the nut line.</source>
        <translation>Der Griff, der die Kurve nach diesem Knoten zieht, von der Sattellinie.</translation>
    </message>
    <message>
        <source>The hardware {id} needs at least one bore.</source>
        <translation>Die Mechanik {id} braucht mindestens eine Bohrung.</translation>
    </message>
    <message>
        <source>The head has to be as wide at the nut line as the strings lie apart in the nut.</source>
        <translation>Die Kopfplatte muss an der Sattellinie so breit sein, wie die Saiten im Sattel auseinander liegen.</translation>
    </message>
    <message>
        <source>The head in space</source>
        <translation>Die Kopfplatte im Raum</translation>
    </message>
    <message>
        <source>The head in space, to be turned.</source>
        <translation>Die Kopfplatte im Raum, zum Drehen.</translation>
    </message>
    <message>
        <source>The head is sawn already: cut the wrap paper along the outline, glue it on the face to centreline and {line}{back}, check it with a rule, and prick every centre.</source>
        <translation>Die Kopfplatte ist schon gesägt: den Hüllbogen entlang dem Umriss ausschneiden, auf Mittellinie und {line} auf die Vorderseite kleben{back}, mit dem Maßstab prüfen und jede Mitte ankörnen.</translation>
    </message>
    <message>
        <source>The head is two pieces of wood until its joint is glued and planed.</source>
        <translation>Bis die Schäftung geleimt und gehobelt ist, besteht die Kopfplatte aus zwei Stücken.</translation>
    </message>
    <message>
        <source>The head is {a} mm thick; the hardware of {item} clamps no less than {b} mm.</source>
        <translation>Die Kopfplatte ist {a} mm dick; die Mechanik von {item} klemmt nicht weniger als {b} mm.</translation>
    </message>
    <message>
        <source>The head is {a} mm thick; the hardware of {item} clamps no more than {b} mm.</source>
        <translation>Die Kopfplatte ist {a} mm dick; die Mechanik von {item} klemmt nicht mehr als {b} mm.</translation>
    </message>
    <message>
        <source>The head made once in scrap by the same plan, and the one that counts. The job book holds hours, money, notes and readings of each by itself.</source>
        <translation>Die Kopfplatte nach demselben Plan einmal aus Abfallholz gemacht, und die, auf die es ankommt. Das Werkbuch hält Stunden, Geld, Notizen und Messwerte von jeder für sich.</translation>
    </message>
    <message>
        <source>The head reaches {measured} mm past the {end} end of {ear}, where there is no wood beside the glue line.</source>
        <translation>Die Kopfplatte reicht {measured} mm über das Ende von {ear} hinaus ({end}), wo neben der Leimfuge kein Holz ist.</translation>
    </message>
    <message>
        <source>The highest number of turns a minute that is printed on the cutter.</source>
        <translation>Die höchste Drehzahl je Minute, die auf dem Fräser steht.</translation>
    </message>
    <message>
        <source>The hole</source>
        <translation>Die Bohrung</translation>
    </message>
    <message>
        <source>The hole is for a tuner: it gives way to the bores of this hardware, about the same centre.</source>
        <translation>Die Bohrung ist für eine Mechanik: sie weicht den Bohrungen dieser Mechanik, um dieselbe Mitte.</translation>
    </message>
    <message>
        <source>The hole of locating pin {item} leaves the blank by {measured} mm.</source>
        <translation>Die Bohrung des Passstifts {item} ragt {measured} mm aus dem Rohling.</translation>
    </message>
    <message>
        <source>The hole of locating pin {item} leaves {a} mm of wood to the edge of the blank; {b} mm wanted.</source>
        <translation>Die Bohrung des Passstifts {item} lässt {a} mm Holz bis zum Rand des Rohlings; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The hole of locating pin {item} leaves {a} mm of wood to where no ear is; {b} mm wanted.</source>
        <translation>Die Bohrung des Passstifts {item} lässt {a} mm Holz bis dorthin, wo kein Ohr ist; gewünscht sind {b} mm.</translation>
    </message>
    <message>
        <source>The hole of locating pin {item} stands where no ear is, and no wood.</source>
        <translation>Die Bohrung des Passstifts {item} steht, wo kein Ohr und kein Holz ist.</translation>
    </message>
    <message>
        <source>The hole of {of} leaves no wood for a centre point: open it up with a twist drill or a reamer, clamped.</source>
        <translation>Die Bohrung von {of} lässt kein Holz für eine Zentrierspitze: mit Spiralbohrer oder Reibahle aufweiten, festgespannt.</translation>
    </message>
    <message>
        <source>The hole that the cutter passes through.</source>
        <translation>Das Loch, durch das der Fräser geht.</translation>
    </message>
    <message>
        <source>The hole that the string goes through, measured as the end of the post.</source>
        <translation>Das Loch, durch das die Saite geht, gemessen wie das Ende der Welle.</translation>
    </message>
    <message>
        <source>The horizon runs through the picture: put the four corners more carefully, or cut the picture to the head.</source>
        <translation>Der Horizont läuft durch das Bild: die vier Ecken sorgfältiger setzen oder das Bild auf die Kopfplatte zuschneiden.</translation>
    </message>
    <message>
        <source>The import could not be started: {error}.</source>
        <translation>Das Einlesen ließ sich nicht starten: {error}.</translation>
    </message>
    <message>
        <source>The import was cancelled.</source>
        <translation>Das Einlesen wurde abgebrochen.</translation>
    </message>
    <message>
        <source>The invented starting rack, sizes in inches.</source>
        <translation>Der erfundene Anfangsbestand, Maße in Zoll.</translation>
    </message>
    <message>
        <source>The invented starting rack, sizes in mm.</source>
        <translation>Der erfundene Anfangsbestand, Maße in mm.</translation>
    </message>
    <message>
        <source>The job book has its own way back: undo of a drawing step never touches it.</source>
        <translation>Das Werkbuch hat seinen eigenen Weg zurück: das Rückgängig der Zeichnung berührt es nie.</translation>
    </message>
    <message>
        <source>The job book is written as soon as the planned times are worked out.</source>
        <translation>Das Werkbuch wird geschrieben, sobald die geplanten Zeiten berechnet sind.</translation>
    </message>
    <message>
        <source>The job book tells of another {new}, which is gone: what was done, measured and noted there would count for this one. Choose another name, or strike that out there first.</source>
        <translation>Das Werkbuch nennt ein anderes Teil {new}, das es nicht mehr gibt: was dort getan, gemessen und vermerkt wurde, würde für dieses gelten. Einen anderen Namen wählen, oder das dort zuerst streichen.</translation>
    </message>
    <message>
        <source>The job book times {operation} of the {piece} piece more than once: keep one.</source>
        <translation>Das Werkbuch hat mehrere Zeiten für {operation} ({piece}): eine behalten.</translation>
    </message>
    <message>
        <source>The job book was not written</source>
        <translation>Das Werkbuch wurde nicht ausgegeben</translation>
    </message>
    <message>
        <source>The kind decides how far its point runs ahead of the full diameter.</source>
        <translation>Die Art bestimmt, wie weit die Spitze dem vollen Durchmesser voraus ist.</translation>
    </message>
    <message>
        <source>The kind of drill decides how far its point runs ahead of the full diameter.</source>
        <translation>Die Bohrerart bestimmt, wie weit die Spitze dem vollen Durchmesser voraus ist.</translation>
    </message>
    <message>
        <source>The knots of a spline must not go down.</source>
        <translation>Die Knotenwerte eines Splines dürfen nicht abnehmen.</translation>
    </message>
    <message>
        <source>The largest radius that fits here is {most}.</source>
        <translation>Der größte Radius, der hier passt, ist {most}.</translation>
    </message>
    <message>
        <source>The last {left} at the nut line are not guided by the template, and a shaving stays: file it off.</source>
        <translation>Auf den letzten {left} an der Sattellinie führt die Schablone nicht, ein Span bleibt stehen: abfeilen.</translation>
    </message>
    <message>
        <source>The later cut follows the wall that the earlier one left.</source>
        <translation>Der spätere Schnitt folgt der Wand, die der frühere gelassen hat.</translation>
    </message>
    <message>
        <source>The layout begins with the starting rack: {error}</source>
        <translation>Der Entwurf beginnt mit dem Anfangsbestand: {error}</translation>
    </message>
    <message>
        <source>The layout changed meanwhile: ask again.</source>
        <translation>Der Entwurf wurde inzwischen geändert: noch einmal fragen.</translation>
    </message>
    <message>
        <source>The layout changed while places for pins were looked for: ask again.</source>
        <translation>Der Entwurf wurde geändert, während Plätze für Stifte gesucht wurden: noch einmal fragen.</translation>
    </message>
    <message>
        <source>The layout has changed and is being planned anew: write the template when that plan is on show.</source>
        <translation>Der Entwurf ist geändert und wird neu geplant: die Schablone ausgeben, sobald dieser Plan zu sehen ist.</translation>
    </message>
    <message>
        <source>The layout has no feature named {id}.</source>
        <translation>Der Entwurf hat kein Teil namens {id}.</translation>
    </message>
    <message>
        <source>The layout has no field {words}.</source>
        <translation>Der Entwurf hat kein Feld {words}.</translation>
    </message>
    <message>
        <source>The layout has no hardware pattern named {id}.</source>
        <translation>Der Entwurf hat kein Bohrbild namens {id}.</translation>
    </message>
    <message>
        <source>The layout has no row named {row}.</source>
        <translation>Der Entwurf hat keine Reihe namens {row}.</translation>
    </message>
    <message>
        <source>The layout has no slot named {ref}.</source>
        <translation>Der Entwurf hat keinen Schlitz namens {ref}.</translation>
    </message>
    <message>
        <source>The layout has no strings yet.</source>
        <translation>Der Entwurf hat noch keine Saiten.</translation>
    </message>
    <message>
        <source>The layout has no {words}.</source>
        <translation>Der Entwurf hat kein {words}.</translation>
    </message>
    <message>
        <source>The layout has strings already.</source>
        <translation>Der Entwurf hat schon Saiten.</translation>
    </message>
    <message>
        <source>The layout has {count:,} tuners, slots, pins and holes, and no more than {most:,} are taken: take out what no head needs.</source>
        <translation>Der Entwurf hat {count:,} Mechaniken, Schlitze, Passstifte und Löcher, und mehr als {most:,} werden nicht genommen: herausnehmen, was keine Kopfplatte braucht.</translation>
    </message>
    <message>
        <source>The layout is saved; the version before it could not be kept beside it.</source>
        <translation>Der Entwurf ist gespeichert; die Fassung davor ließ sich nicht daneben aufbewahren.</translation>
    </message>
    <message>
        <source>The layout now holds a copy of your rack.</source>
        <translation>Der Entwurf enthält nun eine Kopie Ihres Bestands.</translation>
    </message>
    <message>
        <source>The layout was not saved</source>
        <translation>Der Entwurf wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>The layout would take {size:.0f} MB, and no more than {most:.0f} can be opened again: take out what is large, the picture or long notes. An earlier file is untouched.</source>
        <translation>Der Entwurf wäre {size:.0f} MB groß, und nicht mehr als {most:.0f} lassen sich wieder öffnen: herausnehmen, was groß ist, das Bild oder lange Notizen. Eine frühere Datei bleibt unverändert.</translation>
    </message>
    <message>
        <source>The least wood that is to stay between two things. The margins given are common practice without a published source: set what you trust.</source>
        <translation>Die geringste Holzstärke, die zwischen zwei Dingen bleiben soll. Die Vorgaben sind übliche Praxis ohne veröffentlichte Quelle: stellen Sie ein, worauf Sie vertrauen.</translation>
    </message>
    <message>
        <source>The level that parts dark and light best.</source>
        <translation>Der Wert, der Dunkel und Hell am besten trennt.</translation>
    </message>
    <message>
        <source>The line crosses itself more than {most} times, for the first time at {x:.1f} across, {y:.1f} along: draw it anew.</source>
        <translation>Die Linie kreuzt sich selbst mehr als {most}-mal, zum ersten Mal bei {x:.1f} quer und {y:.1f} längs: neu zeichnen.</translation>
    </message>
    <message>
        <source>The line has more than {most} corners that a bit does not get into: draw it with fewer.</source>
        <translation>Die Linie hat mehr als {most} Ecken, in die kein Fräser kommt: mit weniger Ecken zeichnen.</translation>
    </message>
    <message>
        <source>The line has no area inside yet: draw on before closing it.</source>
        <translation>Die Linie umschließt noch keine Fläche: vor dem Schließen weiterzeichnen.</translation>
    </message>
    <message>
        <source>The line is too narrow or turns too tightly for this distance.</source>
        <translation>Die Linie ist für diesen Abstand zu schmal oder biegt zu eng.</translation>
    </message>
    <message>
        <source>The line must cross the centreline at two levels before one side can be mirrored.</source>
        <translation>Die Linie muss die Mittellinie auf zwei Höhen kreuzen, bevor sich eine Seite spiegeln lässt.</translation>
    </message>
    <message>
        <source>The line runs to and fro over {length:,.0f} m, and no more than {most:.0f} m are taken: draw it anew.</source>
        <translation>Die Linie läuft über {length:,.0f} m hin und her, und mehr als {most:.0f} m werden nicht genommen: neu zeichnen.</translation>
    </message>
    <message>
        <source>The line turns more tightly than this distance: choose a smaller one.</source>
        <translation>Die Linie biegt enger als dieser Abstand: einen kleineren wählen.</translation>
    </message>
    <message>
        <source>The line where nut and head begin: everything along the head is measured from where it crosses the centreline.</source>
        <translation>Die Linie, an der Sattel und Kopfplatte beginnen: alles entlang der Kopfplatte wird von ihrem Schnitt mit der Mittellinie gemessen.</translation>
    </message>
    <message>
        <source>The lines of the drawing touch or cross one another in more than {most:,} places: draw the outline as one closed line, or export it alone.</source>
        <translation>Die Linien der Zeichnung berühren oder kreuzen einander an mehr als {most:,} Stellen: den Umriss als eine geschlossene Linie zeichnen oder ihn allein ausgeben.</translation>
    </message>
    <message>
        <source>The longer side of the outline is more than 0.</source>
        <translation>Die längere Seite des Umrisses ist mehr als 0.</translation>
    </message>
    <message>
        <source>The loop has no length: all its nodes lie on one point.</source>
        <translation>Die Linie hat keine Länge: alle Knoten liegen auf einem Punkt.</translation>
    </message>
    <message>
        <source>The loop has {nodes} nodes, so there is no node {index}.</source>
        <translation>Die Linie hat {nodes} Knoten, einen Knoten {index} gibt es nicht.</translation>
    </message>
    <message>
        <source>The lowest turn, measured as the end of the post: where the string runs from to the nut. Left empty it comes straight out of the hole.</source>
        <translation>Die unterste Windung, gemessen wie das Ende der Welle: Von dort läuft die Saite zum Sattel. Bleibt es leer, kommt sie gerade aus dem Loch.</translation>
    </message>
    <message>
        <source>The mark before, the next mark; arrow keys move it</source>
        <translation>Die Marke davor, die nächste; Pfeiltasten versetzen sie</translation>
    </message>
    <message>
        <source>The mark lies on the corner that it was next to; with Alt it stays where you let go.</source>
        <translation>Die Marke liegt auf der Ecke daneben; mit Alt bleibt sie, wo Sie loslassen.</translation>
    </message>
    <message>
        <source>The mirror image would sit on {thing}: press elsewhere, or switch Mirrored off.</source>
        <translation>Das Spiegelbild käme auf {thing} zu sitzen: woanders klicken oder „Gespiegelt“ ausschalten.</translation>
    </message>
    <message>
        <source>The name leads to no file.</source>
        <translation>Der Name führt zu keiner Datei.</translation>
    </message>
    <message>
        <source>The name {id} is used more than once among the {where}: give each its own.</source>
        <translation>Der Name {id} kommt mehrmals vor ({where}): jedem einen eigenen geben.</translation>
    </message>
    <message>
        <source>The name {new} is kept for the {new} itself: choose another.</source>
        <translation>Der Name {new} ist für {new} selbst reserviert: einen anderen wählen.</translation>
    </message>
    <message>
        <source>The name {value} is taken: choose another.</source>
        <translation>Der Name {value} ist vergeben: einen anderen wählen.</translation>
    </message>
    <message>
        <source>The nearest drill in the rack for {named} is {drill}: it drills {by} mm narrower than the {diameter} mm asked for.</source>
        <translation>Der nächste Bohrer im Bestand für {named} ist {drill}: er bohrt um {by} mm enger als die verlangten {diameter} mm.</translation>
    </message>
    <message>
        <source>The nearest drill in the rack for {named} is {drill}: it drills {by} mm wider than the {diameter} mm asked for.</source>
        <translation>Der nächste Bohrer im Bestand für {named} ist {drill}: er bohrt um {by} mm weiter als die verlangten {diameter} mm.</translation>
    </message>
    <message>
        <source>The next job</source>
        <translation>Die nächste Arbeit</translation>
    </message>
    <message>
        <source>The next larger letters, up to twice as large.</source>
        <translation>Die nächstgrößere Schrift, bis zur doppelten Größe.</translation>
    </message>
    <message>
        <source>The next pass</source>
        <translation>Der nächste Durchgang</translation>
    </message>
    <message>
        <source>The next smaller letters.</source>
        <translation>Die nächstkleinere Schrift.</translation>
    </message>
    <message>
        <source>The next snag, the snag before; Ctrl+Enter in the list makes the move that cures it</source>
        <translation>Der nächste Haken, der davor; Strg+Eingabe in der Liste macht den Schritt, der ihn behebt</translation>
    </message>
    <message>
        <source>The nodes are {apart} apart, so the radius must be {half} or more.</source>
        <translation>Die Knoten liegen {apart} auseinander, der Radius muss mindestens {half} sein.</translation>
    </message>
    <message>
        <source>The note it sounds, as C4 or F#3: with diameter and scale length it gives the pull.</source>
        <translation>Der Ton, wie C4 oder F#3: mit Durchmesser und Mensur ergibt er den Zug.</translation>
    </message>
    <message>
        <source>The number for {field!r} is not a length between 0 and {most:g} mm.</source>
        <translation>Die Zahl für {field!r} ist keine Länge zwischen 0 und {most:g} mm.</translation>
    </message>
    <message>
        <source>The number for {field!r} is not an angle from {least} to {most} degrees.</source>
        <translation>Die Zahl für {field!r} ist kein Winkel von {least} bis {most} Grad.</translation>
    </message>
    <message>
        <source>The number of parts is between 0 and {most:,}.</source>
        <translation>Die Stückzahl liegt zwischen 0 und {most:,}.</translation>
    </message>
    <message>
        <source>The number of weights does not match the control points of a spline.</source>
        <translation>Die Zahl der Gewichte passt nicht zu den Kontrollpunkten eines Splines.</translation>
    </message>
    <message>
        <source>The nut and where the strings leave it.</source>
        <translation>Der Sattel und wo die Saiten ihn verlassen.</translation>
    </message>
    <message>
        <source>The nut ends flush with the edges of the neck, and the head goes on from there.</source>
        <translation>Der Sattel schließt bündig mit den Kanten des Halses ab, und dort beginnt die Kopfplatte.</translation>
    </message>
    <message>
        <source>The nut has to be as wide as the strings lie apart in it.</source>
        <translation>Der Sattel muss so breit sein, wie die Saiten in ihm auseinanderliegen.</translation>
    </message>
    <message>
        <source>The nut is &amp;slanted, for fanned frets</source>
        <translation>Der Sattel ist &amp;schräg, für gefächerte Bünde</translation>
    </message>
    <message>
        <source>The nut is slanted by {angle}, its {side} end nearer the tip: {half} to either side of the centreline, at its ends, the nut line lies {off} off the base line, which is square to the centreline through the middle of the nut. Distances along the head, those from the nut line too, are from the base line.</source>
        <translation>Der Sattel liegt um {angle} schräg, auf der Seite {side} näher an der Spitze: An seinen Enden, {half} zu beiden Seiten der Mittellinie, liegt die Sattellinie {off} neben der Grundlinie, die im rechten Winkel zur Mittellinie durch die Mitte des Sattels läuft. Längs der Kopfplatte, auch von der Sattellinie, wird von der Grundlinie gemessen.</translation>
    </message>
    <message>
        <source>The nut is {nut} mm wide, the outline {wood} mm at the nut line.</source>
        <translation>Der Sattel ist {nut} mm breit, der Umriss an der Sattellinie {wood} mm.</translation>
    </message>
    <message>
        <source>The nut measures {nut} (in the layout it is {own} wide), one point of the picture {point}.</source>
        <translation>Der Sattel misst {nut} (im Entwurf ist er {own} breit), ein Bildpunkt {point}.</translation>
    </message>
    <message>
        <source>The nut measures {nut}, one point of the picture {point}.</source>
        <translation>Der Sattel misst {nut}, ein Bildpunkt {point}.</translation>
    </message>
    <message>
        <source>The nut stays {width} wide, where {usual} is usual.</source>
        <translation>Der Sattel bleibt {width} breit, üblich ist {usual}.</translation>
    </message>
    <message>
        <source>The nut wants a flat of face in front of the ramp.</source>
        <translation>Der Sattel braucht ein ebenes Stück Vorderseite vor der Rampe.</translation>
    </message>
    <message>
        <source>The nut would measure {nut}: check the length that was typed and the marks at the nut.</source>
        <translation>Der Sattel würde {nut} messen: die eingegebene Länge und die Marken am Sattel prüfen.</translation>
    </message>
    <message>
        <source>The nut would measure {nut}: check the marks at the nut, or give the size by two points.</source>
        <translation>Der Sattel würde {nut} messen: die Marken am Sattel prüfen oder die Größe durch zwei Punkte angeben.</translation>
    </message>
    <message>
        <source>The one move that was tried does not do it.</source>
        <translation>Der eine versuchte Schritt genügt nicht.</translation>
    </message>
    <message>
        <source>The order is your own; the best one has {n} change.</source>
        <translation>Die Folge ist Ihre eigene; die beste hat {n} Wechsel.</translation>
    </message>
    <message>
        <source>The order is your own; the best one has {n} changes.</source>
        <translation>Die Folge ist Ihre eigene; die beste hat {n} Wechsel.</translation>
    </message>
    <message>
        <source>The order with the fewest changes: {done} of {steps} steps placed</source>
        <translation>Folge mit den wenigsten Wechseln: {done} von {steps} Schritten eingereiht</translation>
    </message>
    <message>
        <source>The other side follows whatever is done on one.</source>
        <translation>Die andere Seite folgt allem, was auf einer geschieht.</translation>
    </message>
    <message>
        <source>The outline</source>
        <translation>Der Umriss</translation>
    </message>
    <message>
        <source>The outline and the hardware are a beginning: measure your own tuners, and change what you like.</source>
        <translation>Umriss und Mechaniken sind ein Anfang: messen Sie Ihre eigenen Mechaniken und ändern Sie, was Sie mögen.</translation>
    </message>
    <message>
        <source>The outline as it lies in the drawing, across or along. Type what it is in truth, and the whole drawing is made larger or smaller.</source>
        <translation>Der Umriss, wie er in der Zeichnung liegt, quer oder längs. Das wahre Maß eingeben, dann wird die ganze Zeichnung größer oder kleiner.</translation>
    </message>
    <message>
        <source>The outline cannot be used: {error}</source>
        <translation>Der Umriss ist nicht brauchbar: {error}</translation>
    </message>
    <message>
        <source>The outline crosses itself at {x:.1f} across, {y:.1f} along.</source>
        <translation>Der Umriss kreuzt sich selbst bei {x:.1f} quer und {y:.1f} längs.</translation>
    </message>
    <message>
        <source>The outline crosses itself at {x}, {y}.</source>
        <translation>Der Umriss kreuzt sich selbst bei {x}; {y}.</translation>
    </message>
    <message>
        <source>The outline crosses itself near {place}: mend the drawing first.</source>
        <translation>Der Umriss kreuzt sich bei {place}: zuerst die Zeichnung in Ordnung bringen.</translation>
    </message>
    <message>
        <source>The outline cuts {opening}, which is there already and reaches {out} mm beyond it.</source>
        <translation>Der Umriss schneidet {opening}; die Tasche ist schon da und reicht {out} mm über ihn hinaus.</translation>
    </message>
    <message>
        <source>The outline does not end in one straight edge through the middle of the nut: draw such an end first.</source>
        <translation>Der Umriss endet nicht in einer geraden Kante durch die Mitte des Sattels: zuerst ein solches Ende zeichnen.</translation>
    </message>
    <message>
        <source>The outline has no edge between the nut line and the tip.</source>
        <translation>Der Umriss hat keine Kante zwischen Sattellinie und Spitze.</translation>
    </message>
    <message>
        <source>The outline has no height, so it has no edges to put tuners on.</source>
        <translation>Der Umriss hat keine Höhe und damit keine Kanten für Mechaniken.</translation>
    </message>
    <message>
        <source>The outline is cut up to {far} mm inside the line that is drawn now, most at x {x} mm, y {y} mm (job book).</source>
        <translation>Der Umriss ist bis zu {far} mm innerhalb der Linie ausgearbeitet, die jetzt gezeichnet ist, am weitesten bei x {x} mm, y {y} mm (Werkbuch).</translation>
    </message>
    <message>
        <source>The outline is cut up to {far} mm outside the line that is drawn now, most at x {x} mm, y {y} mm (job book).</source>
        <translation>Der Umriss ist bis zu {far} mm außerhalb der Linie ausgearbeitet, die jetzt gezeichnet ist, am weitesten bei x {x} mm, y {y} mm (Werkbuch).</translation>
    </message>
    <message>
        <source>The outline is cut, and no slot is left that the template guides: take {pin} out of the drawing.</source>
        <translation>Der Umriss ist ausgearbeitet, und kein Schlitz ist mehr übrig, den die Schablone führt: {pin} aus der Zeichnung nehmen.</translation>
    </message>
    <message>
        <source>The outline is finished, seats stand.</source>
        <translation>Der Umriss ist fertig, Sitze stehen.</translation>
    </message>
    <message>
        <source>The outline is open over {wide:.1f} mm, as where it runs into a neck, and was closed straight across there: see where the nut line comes to lie.</source>
        <translation>Der Umriss ist auf {wide:.1f} mm offen, wie dort, wo er in einen Hals läuft, und wurde dort gerade geschlossen: nachsehen, wo die Sattellinie zu liegen kommt.</translation>
    </message>
    <message>
        <source>The outline is sawn.</source>
        <translation>Der Umriss ist gesägt.</translation>
    </message>
    <message>
        <source>The outline is that of a whole neck: its headstock was cut off {length:.1f} mm behind the tip, as you said.</source>
        <translation>Der Umriss ist der eines ganzen Halses: Seine Kopfplatte wurde {length:.1f} mm hinter der Spitze abgeschnitten, wie gesagt.</translation>
    </message>
    <message>
        <source>The outline is that of a whole neck: its headstock was cut off {length:.1f} mm behind the tip, where a line lies across the neck. See whether that is the nut line.</source>
        <translation>Der Umriss ist der eines ganzen Halses: Seine Kopfplatte wurde {length:.1f} mm hinter der Spitze abgeschnitten, wo eine Linie quer über den Hals liegt. Ansehen, ob das die Sattellinie ist.</translation>
    </message>
    <message>
        <source>The outline is that of a whole neck: its headstock was cut off {length:.1f} mm behind the tip, where the straight sides of the neck end. See whether the nut line lies there.</source>
        <translation>Der Umriss ist der eines ganzen Halses: Seine Kopfplatte wurde {length:.1f} mm hinter der Spitze abgeschnitten, wo die geraden Seiten des Halses enden. Ansehen, ob die Sattellinie dort liegt.</translation>
    </message>
    <message>
        <source>The outline leaves the blank by {measured} mm at the {side}.</source>
        <translation>Der Umriss ragt {measured} mm über den Rohling hinaus ({side}).</translation>
    </message>
    <message>
        <source>The outline measures {sized}.</source>
        <translation>Der Umriss misst {sized}.</translation>
    </message>
    <message>
        <source>The outline measures {sized}: no headstock is that size. Choose another unit, or import once more to take it all the same.</source>
        <translation>Der Umriss misst {sized}: so groß ist keine Kopfplatte. Eine andere Einheit wählen, oder noch einmal einlesen, um ihn trotzdem zu nehmen.</translation>
    </message>
    <message>
        <source>The outline measures {sized}: no headstock is that size. Look at the unit.</source>
        <translation>Der Umriss misst {sized}: so groß ist keine Kopfplatte. Auf die Einheit sehen.</translation>
    </message>
    <message>
        <source>The outline measures {sized}: that is the whole neck, with its headstock.</source>
        <translation>Der Umriss misst {sized}: Das ist der ganze Hals mit seiner Kopfplatte.</translation>
    </message>
    <message>
        <source>The outline measures {width} x {height}, far more than a headstock: give the right unit.</source>
        <translation>Der Umriss misst {width} x {height}, viel mehr als eine Kopfplatte: die richtige Einheit angeben.</translation>
    </message>
    <message>
        <source>The outline of the layout is replaced. Tuners along an edge go with it, all else but what is ticked stays where it is. The picture's own errors come on top: check the first print with the 100 mm bar.</source>
        <translation>Der Umriss des Entwurfs wird ersetzt. Mechaniken entlang einer Kante gehen mit; was nicht angekreuzt ist, bleibt, wo es ist. Die Fehler des Bildes kommen hinzu: den ersten Ausdruck am 100-mm-Balken prüfen.</translation>
    </message>
    <message>
        <source>The outline or a slot set in or out evenly, or a slot beside it.</source>
        <translation>Den Umriss oder einen Schlitz gleichmäßig nach innen oder außen setzen, oder einen Schlitz daneben.</translation>
    </message>
    <message>
        <source>The outline stays, as every head has one: draw or import another, and that takes its place.</source>
        <translation>Der Umriss bleibt, denn jede Kopfplatte hat einen: einen anderen zeichnen oder einlesen, der tritt an seine Stelle.</translation>
    </message>
    <message>
        <source>The outline touches the nut line in one point only, so it has no edge to rout.</source>
        <translation>Der Umriss berührt die Sattellinie nur in einem Punkt, er hat keine Kante zum Fräsen.</translation>
    </message>
    <message>
        <source>The owners have not chosen a licence yet: all rights reserved.</source>
        <translation>Die Eigentümer haben noch keine Lizenz gewählt: alle Rechte vorbehalten.</translation>
    </message>
    <message>
        <source>The page says that it was corrected</source>
        <translation>Die Seite sagt, dass sie korrigiert war</translation>
    </message>
    <message>
        <source>The pages are being laid out anew: print them when they are on show.</source>
        <translation>Die Blätter werden neu angeordnet: drucken, sobald sie zu sehen sind.</translation>
    </message>
    <message>
        <source>The pages are being laid out.</source>
        <translation>Die Seiten werden gelegt.</translation>
    </message>
    <message>
        <source>The pages cannot be prepared: {why}. Make room where the system keeps temporary files, then print again.</source>
        <translation>Die Seiten lassen sich nicht vorbereiten: {why}. Platz schaffen, wo das System vorübergehende Dateien hält, dann noch einmal drucken.</translation>
    </message>
    <message>
        <source>The pages need {papers}: print them apart.</source>
        <translation>Die Seiten brauchen {papers}: getrennt drucken.</translation>
    </message>
    <message>
        <source>The pages on show are of this layout.</source>
        <translation>Die gezeigten Seiten gehören zu diesem Entwurf.</translation>
    </message>
    <message>
        <source>The pages on show are older than the last change: have them laid out before you print.</source>
        <translation>Die gezeigten Seiten sind älter als die letzte Änderung: vor dem Drucken neu legen lassen.</translation>
    </message>
    <message>
        <source>The pages on show are older than the last change: they are being laid out anew.</source>
        <translation>Die gezeigten Seiten sind älter als die letzte Änderung: sie werden neu gelegt.</translation>
    </message>
    <message>
        <source>The pages were not printed whole: make room where the system keeps temporary files, then print again.</source>
        <translation>Die Seiten wurden nicht ganz gedruckt: Platz schaffen, wo das System vorübergehende Dateien hält, dann noch einmal drucken.</translation>
    </message>
    <message>
        <source>The pages would come out at 100 %, not corrected: measure the bars before you glue.</source>
        <translation>Die Seiten kämen zu 100 % heraus, nicht korrigiert: messen Sie die Balken nach, bevor Sie kleben.</translation>
    </message>
    <message>
        <source>The papers are pasted on the head as it is with its veneers: glued on later, the veneer covers every mark.</source>
        <translation>Die Papiere werden auf die Kopfplatte mitsamt Furnieren geklebt: später aufgeleimt, deckt das Furnier jede Markierung zu.</translation>
    </message>
    <message>
        <source>The papers at full size</source>
        <translation>Die Papiere in voller Größe</translation>
    </message>
    <message>
        <source>The papers go onto the head as it is glued up: {core} of wood with {layers}, {whole} together. Depths count from the outside of a veneer.</source>
        <translation>Die Papiere kommen auf die fertig verleimte Kopfplatte: {core} Holz mit {layers}, zusammen {whole}. Tiefen zählen von der Außenseite eines Furniers an.</translation>
    </message>
    <message>
        <source>The papers that are pasted on (job book) do not have {names} where it is drawn now.</source>
        <translation>Auf den aufgeklebten Bögen (Werkbuch) liegt {names} nicht dort, wo es jetzt gezeichnet ist.</translation>
    </message>
    <message>
        <source>The papers that are pasted on (job book) do not have {names} where they are drawn now.</source>
        <translation>Auf den aufgeklebten Bögen (Werkbuch) liegen {names} nicht dort, wo sie jetzt gezeichnet sind.</translation>
    </message>
    <message>
        <source>The papers would lie over open holes: plugs are planed flush before, and a centre is pricked in wood.</source>
        <translation>Die Bögen lägen über offenen Löchern: Stopfen werden vorher bündig gehobelt, und eine Mitte wird in Holz gestochen.</translation>
    </message>
    <message>
        <source>The part may not go in: try it in scrap first, or enter a drill of that size in the rack.</source>
        <translation>Das Teil geht vielleicht nicht hinein: zuerst in einem Reststück probieren oder einen Bohrer dieser Größe im Bestand eintragen.</translation>
    </message>
    <message>
        <source>The part of a tuner that fingers turn.</source>
        <translation>Der Teil der Mechanik, den die Finger drehen.</translation>
    </message>
    <message>
        <source>The part of a tuner that the string winds on; the string hole goes through it.</source>
        <translation>Der Teil der Mechanik, auf den die Saite wickelt; das Saitenloch geht hindurch.</translation>
    </message>
    <message>
        <source>The part that the collet grips. Without a bearing it may rub on the template.</source>
        <translation>Der Teil, den die Spannzange hält. Ohne Anlaufring darf er an der Schablone anliegen.</translation>
    </message>
    <message>
        <source>The pass before</source>
        <translation>Der Durchgang davor</translation>
    </message>
    <message>
        <source>The path is broken at ({x:.3f}, {y:.3f}): the next segment starts {distance:.3f} mm away.</source>
        <translation>Der Pfad ist bei ({x:.3f}; {y:.3f}) unterbrochen: das nächste Stück beginnt {distance:.3f} mm entfernt.</translation>
    </message>
    <message>
        <source>The pen: {x} points from the left, {y} from the top. Enter presses.</source>
        <translation>Der Stift: {x} Punkte von links, {y} von oben. Eingabe klickt.</translation>
    </message>
    <message>
        <source>The picture behind the drawing cannot be laid where it should: {error}.</source>
        <translation>Das Bild hinter der Zeichnung lässt sich nicht an seinen Platz legen: {error}.</translation>
    </message>
    <message>
        <source>The picture in this layout is damaged: lay it behind the drawing again.</source>
        <translation>Das Bild in diesem Entwurf ist beschädigt: erneut hinter die Zeichnung legen.</translation>
    </message>
    <message>
        <source>The picture is hidden: show it to move it.</source>
        <translation>Das Bild ist ausgeblendet: zum Versetzen im Bereich Umriss einblenden.</translation>
    </message>
    <message>
        <source>The picture is locked: unlock it on the Outline stage to move it.</source>
        <translation>Das Bild ist gesperrt: zum Versetzen im Bereich Umriss entsperren.</translation>
    </message>
    <message>
        <source>The picture lies behind the drawing. The nut in it measures {nut}, but {own} is the nearest that this layout begins with: check the size of the picture, or set the width of the nut.</source>
        <translation>Das Bild liegt hinter der Zeichnung. Der Sattel darin misst {nut}, dieser Entwurf beginnt aber mit {own}, näher kommt er nicht: die Größe des Bildes prüfen oder die Breite des Sattels einstellen.</translation>
    </message>
    <message>
        <source>The picture lies behind: Ctrl+T traces it, or draw over it.</source>
        <translation>Das Bild liegt dahinter: Strg+T zieht es nach, oder darüber zeichnen.</translation>
    </message>
    <message>
        <source>The picture shows it with what would do.</source>
        <translation>Das Bild zeigt es mit dem, was ginge.</translation>
    </message>
    <message>
        <source>The picture shows the back</source>
        <translation>Das Bild zeigt die Rückseite</translation>
    </message>
    <message>
        <source>The piece at this step</source>
        <translation>Das Stück bei diesem Schritt</translation>
    </message>
    <message>
        <source>The piece is begun anew. “Take the last entry back” brings its record back.</source>
        <translation>Das Stück ist neu begonnen. „Den letzten Eintrag zurücknehmen“ bringt seine Aufzeichnungen zurück.</translation>
    </message>
    <message>
        <source>The piece on the bench</source>
        <translation>Das Stück auf der Werkbank</translation>
    </message>
    <message>
        <source>The piece, stage by stage</source>
        <translation>Das Stück, Stufe für Stufe</translation>
    </message>
    <message>
        <source>The pin {inside} stands in the way of the cutter that it is to guide: move the pin.</source>
        <translation>Der Stift {inside} steht im Weg des Fräsers, den er führen soll: den Stift versetzen.</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>The plan is being worked out.</source>
        <translation>Der Plan wird berechnet.</translation>
    </message>
    <message>
        <source>The plan on show is of this layout.</source>
        <translation>Der gezeigte Plan gehört zu diesem Entwurf.</translation>
    </message>
    <message>
        <source>The plan on show is older than the last change: it is being worked out anew.</source>
        <translation>Der gezeigte Plan ist älter als die letzte Änderung: er wird neu berechnet.</translation>
    </message>
    <message>
        <source>The planned times are being worked out.</source>
        <translation>Die geplanten Zeiten werden berechnet.</translation>
    </message>
    <message>
        <source>The planned times on show are of this layout.</source>
        <translation>Die gezeigten geplanten Zeiten gehören zu diesem Entwurf.</translation>
    </message>
    <message>
        <source>The planned times on show are older than the last change: they are being worked out anew.</source>
        <translation>Die gezeigten geplanten Zeiten sind älter als die letzte Änderung: sie werden neu berechnet.</translation>
    </message>
    <message>
        <source>The plate of {feature} has no seat before the outline is finished.</source>
        <translation>Die Platte von {feature} hat keinen Sitz, bevor der Umriss fertig ist.</translation>
    </message>
    <message>
        <source>The plate of {item} bridges the curved edge by {rock} mm.</source>
        <translation>Die Platte von {item} liegt auf der gebogenen Kante {rock} mm hohl.</translation>
    </message>
    <message>
        <source>The plate of {item} lies {a} mm from the outline; {b} mm wanted.</source>
        <translation>Die Platte von {item} liegt {a} mm vom Umriss; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The plate of {item} lies {a} mm from the {side}; {b} mm wanted.</source>
        <translation>Die Platte von {item} liegt {a} mm von der {side}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The plate of {item} overhangs the outline by {measured} mm.</source>
        <translation>Die Platte von {item} steht {measured} mm über den Umriss hinaus.</translation>
    </message>
    <message>
        <source>The plate of {item} reaches {depth} mm over {opening}.</source>
        <translation>Die Platte von {item} ragt {depth} mm über {opening}.</translation>
    </message>
    <message>
        <source>The plate of {item} reaches {measured} mm over the flat for {other}, which lies {deep} mm deeper: nothing carries it there.</source>
        <translation>Die Platte von {item} reicht {measured} mm über die Fläche für {other}, die {deep} mm tiefer liegt: Dort trägt sie nichts.</translation>
    </message>
    <message>
        <source>The plate of {item} rocks on the curved edge by {rock} mm.</source>
        <translation>Die Platte von {item} kippelt auf der gebogenen Kante um {rock} mm.</translation>
    </message>
    <message>
        <source>The plate of {item} runs {measured} mm past the {end} end of the edge.</source>
        <translation>Die Platte von {item} ragt {measured} mm über das Ende der Kante hinaus ({end}).</translation>
    </message>
    <message>
        <source>The plate of {item} stands {measured} mm over the {side}.</source>
        <translation>Die Platte von {item} steht {measured} mm über die {side} hinaus.</translation>
    </message>
    <message>
        <source>The plate of {tuner} is held in place by its post: without the bore it cannot be used to drill through.</source>
        <translation>Die Platte von {tuner} wird von ihrer Welle gehalten: ohne Bohrung lässt sich nicht durch sie bohren.</translation>
    </message>
    <message>
        <source>The plates of {one} and {two} lie {a} mm apart; {b} mm wanted.</source>
        <translation>Die Platten von {one} und {two} liegen {a} mm auseinander; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The plates of {one} and {two} overlap by {measured} mm.</source>
        <translation>Die Platten von {one} und {two} überlappen sich um {measured} mm.</translation>
    </message>
    <message>
        <source>The point lies straight behind, so no arc goes on to it: choose another edge.</source>
        <translation>Der Punkt liegt genau dahinter, kein Bogen führt dorthin: eine andere Kante wählen.</translation>
    </message>
    <message>
        <source>The point of {drill} would mark the floor of {slot}, which is {depth} deep.</source>
        <translation>Die Spitze von {drill} würde den Grund von {slot} ({depth} tief) verletzen.</translation>
    </message>
    <message>
        <source>The post bore of {item} leaves {above} mm of wood in the post's way.</source>
        <translation>Die Wellenbohrung von {item} geht nicht durch: {above} mm Holz stehen der Welle im Weg.</translation>
    </message>
    <message>
        <source>The post has to pass from the back to the face.</source>
        <translation>Die Welle muss von der Rückseite zur Vorderseite durchgehen.</translation>
    </message>
    <message>
        <source>The post has to turn free of the slot's inner wall.</source>
        <translation>Die Welle muss sich frei von der Innenwand des Schlitzes drehen.</translation>
    </message>
    <message>
        <source>The post of a side tuner has to lie across a slot.</source>
        <translation>Die Welle einer Seitenmechanik muss quer in einem Schlitz liegen.</translation>
    </message>
    <message>
        <source>The post of {item} ends {a} mm before the inner wall of {own}; {b} mm wanted.</source>
        <translation>Die Welle von {item} endet {a} mm vor der Innenwand von {own}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The post of {item} is {lacking} mm longer than its bore, which ends in wood.</source>
        <translation>Die Welle von {item} ist {lacking} mm länger als ihre Bohrung, die im Holz endet.</translation>
    </message>
    <message>
        <source>The post of {item} lies {a} mm from the end of {own}; {b} mm wanted.</source>
        <translation>Die Welle von {item} liegt {a} mm vom Ende von {own}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The post of {item} runs {measured} mm into the end of {own}.</source>
        <translation>Die Welle von {item} dringt {measured} mm in das Ende von {own} ein.</translation>
    </message>
    <message>
        <source>The post of {item} runs {measured} mm into the inner wall of {own}.</source>
        <translation>Die Welle von {item} dringt {measured} mm in die Innenwand von {own} ein.</translation>
    </message>
    <message>
        <source>The post's end lies {deep} deep in the inner wall.</source>
        <translation>Das Ende der Welle steckt {deep} tief in der Innenwand.</translation>
    </message>
    <message>
        <source>The posts of {one} and {two} pass {a} mm apart; {b} mm wanted.</source>
        <translation>Zwischen den Wellen von {one} und {two} bleiben {a} mm; gewünscht sind {b} mm.</translation>
    </message>
    <message>
        <source>The posts of {one} and {two} run {measured} mm into each other.</source>
        <translation>Die Wellen von {one} und {two} laufen {measured} mm ineinander.</translation>
    </message>
    <message>
        <source>The price of {part} is not an amount of money: write for example 12.50.</source>
        <translation>Der Preis von {part} ist kein Geldbetrag: zum Beispiel 12.50 schreiben.</translation>
    </message>
    <message>
        <source>The print lacks some letters of the layout's name and shows others in their place.</source>
        <translation>Dem Druck fehlen einige Zeichen im Namen des Entwurfs, er zeigt andere an ihrer Stelle.</translation>
    </message>
    <message>
        <source>The printed template is another: choose {tool} for the template and print it again, or none of this fits.</source>
        <translation>Die gedruckte Schablone ist eine andere: {tool} für die Schablone wählen und neu drucken, sonst passt nichts davon.</translation>
    </message>
    <message>
        <source>The printer</source>
        <translation>Der Drucker</translation>
    </message>
    <message>
        <source>The printer stopped after page {i} of {wanted}.</source>
        <translation>Der Drucker hielt nach Seite {i} von {wanted} an.</translation>
    </message>
    <message>
        <source>The printer's correction</source>
        <translation>Die Korrektur des Druckers</translation>
    </message>
    <message>
        <source>The printer's stretch explains the places ({odds} that chance alone does as much): what should be 100 mm came out as {across:.2f} mm across the head and {along:.2f} mm along it. Measure the two bars of a printed page: if they say the same, correct the printer.</source>
        <translation>Die Dehnung des Druckers erklärt die Orte ({odds}, dass allein der Zufall so viel ausmacht): aus 100 mm wurden {across:.2f} mm quer und {along:.2f} mm längs. Die beiden Balken einer gedruckten Seite messen: sagen sie dasselbe, den Drucker korrigieren.</translation>
    </message>
    <message>
        <source>The proposed line crosses itself: allow less deviation, shift the level of grey, or choose a cleaner picture.</source>
        <translation>Die vorgeschlagene Linie kreuzt sich: weniger Abweichung zulassen, den Grauwert verschieben oder ein saubereres Bild wählen.</translation>
    </message>
    <message>
        <source>The quill travels {quill}, less than this bore needs: drill, stop the machine, raise the table and go on.</source>
        <translation>Der Pinolenhub ist {quill}, weniger als diese Bohrung braucht: bohren, Maschine anhalten, Tisch anheben und weiterbohren.</translation>
    </message>
    <message>
        <source>The rack</source>
        <translation>Der Bestand</translation>
    </message>
    <message>
        <source>The rack cannot be saved: {error}</source>
        <translation>Der Bestand lässt sich nicht speichern: {error}</translation>
    </message>
    <message>
        <source>The rack has no {diameter} drill: add one, or choose another size.</source>
        <translation>Im Bestand ist kein Bohrer von {diameter}: einen eintragen oder ein anderes Maß wählen.</translation>
    </message>
    <message>
        <source>The rack holds no brad point or Forstner bit to drill the waste out with: add one.</source>
        <translation>Im Bestand ist kein Zentrierspitz- oder Forstnerbohrer zum Ausbohren: einen eintragen.</translation>
    </message>
    <message>
        <source>The rack holds no drill of this diameter.</source>
        <translation>Im Bestand ist kein Bohrer dieses Durchmessers.</translation>
    </message>
    <message>
        <source>The rack holds no {diameter} mm drill for {named}.</source>
        <translation>Im Bestand ist kein Bohrer von {diameter} mm für {named}.</translation>
    </message>
    <message>
        <source>The rack holds nothing named {id}.</source>
        <translation>Im Bestand ist nichts namens {id}.</translation>
    </message>
    <message>
        <source>The rack in this layout</source>
        <translation>Der Bestand dieses Entwurfs</translation>
    </message>
    <message>
        <source>The rail beside {opening} is {a} mm; {b} mm wanted.</source>
        <translation>Die Wange neben {opening} ist {a} mm breit; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The rail beside {opening}, which is there already, is {a} mm; {b} mm wanted.</source>
        <translation>Die Wange neben {opening}, schon vorhanden, misst {a} mm; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The rail between the flat for {item} and {opening} is {a} mm; {b} mm wanted.</source>
        <translation>Die Wange zwischen der Fläche für {item} und {opening} ist {a} mm breit; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The rail is the wood between a slot and the outline; it carries the tuners.</source>
        <translation>Die Wange ist das Holz zwischen Schlitz und Umriss; sie trägt die Mechaniken.</translation>
    </message>
    <message>
        <source>The ramp has to lie deeper than the strings that it leads down.</source>
        <translation>Die Rampe muss tiefer liegen als die Saiten, die sie hinabführt.</translation>
    </message>
    <message>
        <source>The ramp of {slot} begins {a} mm from the nut; {b} mm wanted.</source>
        <translation>Die Rampe von {slot} beginnt {a} mm vom Sattel; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The ramp of {slot} comes out of the back by {measured} mm.</source>
        <translation>Die Rampe von {slot} tritt {measured} mm weit aus der Rückseite aus.</translation>
    </message>
    <message>
        <source>The ramp of {slot} cuts {measured} mm into {other}.</source>
        <translation>Die Rampe von {slot} schneidet {measured} mm in {other}.</translation>
    </message>
    <message>
        <source>The ramp of {slot} cuts {measured} mm into {pocket}, which is there already.</source>
        <translation>Die Rampe von {slot} schneidet {measured} mm in {pocket}, schon vorhanden.</translation>
    </message>
    <message>
        <source>The ramp of {slot} is cut {was} (job book); the drawing now says {now}.</source>
        <translation>Die Rampe von {slot} ist ausgearbeitet: {was} (Werkbuch); die Zeichnung sagt jetzt: {now}.</translation>
    </message>
    <message>
        <source>The ramp of {slot} is {a} mm deep where it meets the slot, which is {b} mm deep.</source>
        <translation>Die Rampe von {slot} ist {a} mm tief, wo sie den Schlitz trifft; dieser ist {b} mm tief.</translation>
    </message>
    <message>
        <source>The ramp of {slot} leaves {a} mm of wood to the back where it is deepest; {b} mm wanted.</source>
        <translation>Die Rampe von {slot} lässt an ihrer tiefsten Stelle {a} mm Holz zur Rückseite; gewünscht sind {b} mm.</translation>
    </message>
    <message>
        <source>The ramp of {slot} leaves {a} mm to the outline; {b} mm wanted.</source>
        <translation>Die Rampe von {slot} lässt {a} mm bis zum Umriss; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The ramp of {slot} leaves {a} mm to {other}; {b} mm wanted.</source>
        <translation>Die Rampe von {slot} lässt {a} mm zu {other}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The ramp of {slot} leaves {a} mm to {pocket}, which is there already; {b} mm wanted.</source>
        <translation>Die Rampe von {slot} lässt {a} mm zu {pocket}, schon vorhanden; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The ramp of {slot} runs out at the edge by {measured} mm.</source>
        <translation>Die Rampe von {slot} läuft um {measured} mm über den Rand hinaus.</translation>
    </message>
    <message>
        <source>The ramp of {slot} runs {measured} mm past the nut line.</source>
        <translation>Die Rampe von {slot} reicht {measured} mm über die Sattellinie hinaus.</translation>
    </message>
    <message>
        <source>The ramp runs out into {feature}: with the slot still full the file has nowhere to go, and the template no flat face to lie on.</source>
        <translation>Die Rampe läuft in {feature} aus: ist der Schlitz noch voll, findet die Feile keinen Auslauf und die Schablone keine ebene Vorderseite.</translation>
    </message>
    <message>
        <source>The rates of the Order stage become what you found; one undo takes it back.</source>
        <translation>Die Richtwerte im Bereich Folge werden, was Sie gefunden haben; einmal „Rückgängig“ nimmt es zurück.</translation>
    </message>
    <message>
        <source>The real piece has a hole, by the job book, that the drawing has no more.</source>
        <translation>Das echte Stück hat laut Werkbuch ein Loch, das die Zeichnung nicht mehr hat.</translation>
    </message>
    <message>
        <source>The real piece has a slot, by the job book, that the drawing has no more.</source>
        <translation>Das echte Stück hat laut Werkbuch einen Schlitz, den die Zeichnung nicht mehr hat.</translation>
    </message>
    <message>
        <source>The reamer is led by the drilled hole.</source>
        <translation>Die Reibahle wird vom gebohrten Loch geführt.</translation>
    </message>
    <message>
        <source>The record of hours and money, of the practice piece and of the real one.</source>
        <translation>Das Verzeichnis von Stunden und Geld, vom Probestück und vom echten.</translation>
    </message>
    <message>
        <source>The rectangle needs a width and a height above zero.</source>
        <translation>Das Rechteck braucht eine Breite und eine Höhe über null.</translation>
    </message>
    <message>
        <source>The report below tells whoever mends the program where the fault is. It holds no layout and no names of your folders; it is sent nowhere.</source>
        <translation>Der Bericht unten sagt, wo der Fehler liegt, für den, der das Programm in Ordnung bringt. Er enthält keinen Entwurf und keine Namen Ihrer Ordner; er wird nirgendwohin gesendet.</translation>
    </message>
    <message>
        <source>The report is on the clipboard.</source>
        <translation>Der Bericht ist in der Zwischenablage.</translation>
    </message>
    <message>
        <source>The report is saved as {path}.</source>
        <translation>Der Bericht ist gespeichert als {path}.</translation>
    </message>
    <message>
        <source>The retainer on {hole} holds no string down: none passes under it higher than it reaches.</source>
        <translation>Der Niederhalter auf {hole} hält keine Saite nieder: Keine läuft höher unter ihm durch, als er reicht.</translation>
    </message>
    <message>
        <source>The retainer on {hole} is screwed to the face, where there is no hole: it is drilled from the back and does not come through.</source>
        <translation>Der Niederhalter auf {hole} wird auf die Vorderseite geschraubt, doch dort ist keine Bohrung: Sie wird von der Rückseite gebohrt und kommt nicht durch.</translation>
    </message>
    <message>
        <source>The retainer on {hole} lies {a} mm from the post of {item}; {b} mm wanted.</source>
        <translation>Der Niederhalter auf {hole} liegt {a} mm von der Welle von {item}; gewünscht sind {b} mm.</translation>
    </message>
    <message>
        <source>The retainer on {hole} runs {measured} mm into the post of {item}.</source>
        <translation>Der Niederhalter auf {hole} läuft {measured} mm in die Welle von {item}.</translation>
    </message>
    <message>
        <source>The retainers on {one} and {two} overlap by {measured} mm.</source>
        <translation>Die Niederhalter auf {one} und {two} überlappen sich um {measured} mm.</translation>
    </message>
    <message>
        <source>The router has no collet for its {shank} shank (it has {sizes}).</source>
        <translation>Die Oberfräse hat keine Spannzange für den Schaft von {shank} (vorhanden: {sizes}).</translation>
    </message>
    <message>
        <source>The router pushed the same way as its cutter turns: it grabs and runs away, out of your hands or with the work. Always feed against the turning; where the grain would tear, leave a shaving for a last light pass, or rout from the other side.</source>
        <translation>Die Oberfräse in Drehrichtung des Fräsers geschoben: sie hakt und läuft davon, aus den Händen oder mit dem Werkstück. Immer gegen die Drehung führen; wo die Faser ausreißen würde, einen Span für einen letzten leichten Durchgang lassen oder von der anderen Seite fräsen.</translation>
    </message>
    <message>
        <source>The row {row} follows its edge, and so do its buttons.</source>
        <translation>Die Reihe {row} folgt ihrer Kante, und ihre Flügel auch.</translation>
    </message>
    <message>
        <source>The running order is being worked out.</source>
        <translation>Die Folge wird berechnet.</translation>
    </message>
    <message>
        <source>The same the other way round.</source>
        <translation>Dasselbe andersherum.</translation>
    </message>
    <message>
        <source>The same, and what is held stays held</source>
        <translation>Dasselbe, und Gehaltenes bleibt gehalten</translation>
    </message>
    <message>
        <source>The scarf joint is glued and the head planed before any paper goes on.</source>
        <translation>Die Schäftung wird geleimt und die Kopfplatte gehobelt, bevor ein Papier aufgeklebt wird.</translation>
    </message>
    <message>
        <source>The screws are drilled through the plate as it lies on its flat.</source>
        <translation>Die Schrauben werden durch die Platte gebohrt, wie sie auf ihrer Fläche liegt.</translation>
    </message>
    <message>
        <source>The seam where two pieces of wood meet: an ear and the blank, a veneer and the core, head and neck in a scarf joint.</source>
        <translation>Die Naht, an der zwei Stücke Holz aneinanderstoßen: ein Ohr und der Rohling, ein Furnier und der Kern, Kopfplatte und Hals in einer Schäftung.</translation>
    </message>
    <message>
        <source>The search for a move that cures it is not finished: choose this card, and it goes on.</source>
        <translation>Die Suche nach einem Schritt, der es behebt, ist nicht zu Ende: diese Karte wählen, dann geht sie weiter.</translation>
    </message>
    <message>
        <source>The search for posts was cut short before it found a way: hold some posts that are right, and ask again.</source>
        <translation>Die Suche nach Wellen brach ab, ehe sie einen Weg fand: einige Wellen festhalten, die richtig belegt sind, und noch einmal fragen.</translation>
    </message>
    <message>
        <source>The search was cut short: a better one may exist.</source>
        <translation>Die Suche wurde abgekürzt: vielleicht gibt es eine bessere.</translation>
    </message>
    <message>
        <source>The seat of {item} lies {waste} mm outside the square edge.</source>
        <translation>Der Sitz von {item} liegt {waste} mm außerhalb der geraden Kante.</translation>
    </message>
    <message>
        <source>The shapes of the layout leave this feature nowhere to be.</source>
        <translation>Die Formen des Entwurfs lassen diesem Teil keinen Platz.</translation>
    </message>
    <message>
        <source>The sheets are being written already.</source>
        <translation>Die Blätter werden schon ausgegeben.</translation>
    </message>
    <message>
        <source>The sheets are being written.</source>
        <translation>Die Blätter werden ausgegeben.</translation>
    </message>
    <message>
        <source>The sheets are still being written. The window closes when they are.</source>
        <translation>Die Blätter werden noch ausgegeben. Danach schließt das Fenster.</translation>
    </message>
    <message>
        <source>The sheets were not printed</source>
        <translation>Die Blätter wurden nicht gedruckt</translation>
    </message>
    <message>
        <source>The sheets were not written</source>
        <translation>Die Blätter wurden nicht ausgegeben</translation>
    </message>
    <message>
        <source>The side bore of {item} ends {lacking} mm before {own}.</source>
        <translation>Die Seitenbohrung von {item} endet {lacking} mm vor {own}.</translation>
    </message>
    <message>
        <source>The side bore of {item} has to go {lacking} mm deeper to let all of the post through to {own}.</source>
        <translation>Die Seitenbohrung von {item} muss {lacking} mm tiefer gehen, damit die ganze Welle bis in {own} durchkommt.</translation>
    </message>
    <message>
        <source>The side bore of {item} meets no slot at its height.</source>
        <translation>Die Seitenbohrung von {item} trifft auf ihrer Höhe keinen Schlitz.</translation>
    </message>
    <message>
        <source>The sloped nut end of a slot, cut so that the strings dive in without touching wood.</source>
        <translation>Das schräge Sattelende eines Schlitzes, so geschnitten, dass die Saiten eintauchen, ohne Holz zu berühren.</translation>
    </message>
    <message>
        <source>The slot</source>
        <translation>Der Schlitz</translation>
    </message>
    <message>
        <source>The slot has more than {most} sharp corners, the first of them at {x:.1f} across, {y:.1f} along: draw it with fewer.</source>
        <translation>Der Schlitz hat mehr als {most} scharfe Ecken, die erste bei {x:.1f} quer und {y:.1f} längs: mit weniger Ecken zeichnen.</translation>
    </message>
    <message>
        <source>The slot has to be as wide as the cutter everywhere.</source>
        <translation>Der Schlitz muss überall so breit wie der Fräser sein.</translation>
    </message>
    <message>
        <source>The slot has to be finished from the other side.</source>
        <translation>Der Schlitz muss von der anderen Seite fertig werden.</translation>
    </message>
    <message>
        <source>The slot is measured over its round ends, so it cannot be shorter than it is wide.</source>
        <translation>Der Schlitz wird über seine runden Enden gemessen, er kann nicht kürzer als breit sein.</translation>
    </message>
    <message>
        <source>The square blank lies against fence and clamps; the shape of the head gives them little to hold.</source>
        <translation>Der rechtwinklige Rohling liegt an Anschlag und Zwingen an; die Form der Kopfplatte bietet ihnen wenig Halt.</translation>
    </message>
    <message>
        <source>The square edges are gone.</source>
        <translation>Die geraden Kanten sind fort.</translation>
    </message>
    <message>
        <source>The stages along the top</source>
        <translation>Die Bereiche oben</translation>
    </message>
    <message>
        <source>The step after (Right)</source>
        <translation>Der Schritt danach (Rechts)</translation>
    </message>
    <message>
        <source>The step before (Left)</source>
        <translation>Der Schritt davor (Links)</translation>
    </message>
    <message>
        <source>The step in words</source>
        <translation>Der Schritt in Worten</translation>
    </message>
    <message>
        <source>The steps on show are of this layout.</source>
        <translation>Die gezeigten Schritte gehören zu diesem Entwurf.</translation>
    </message>
    <message>
        <source>The steps on show are older than the last change: they are being worked out anew.</source>
        <translation>Die gezeigten Schritte sind älter als die letzte Änderung: sie werden neu berechnet.</translation>
    </message>
    <message>
        <source>The straight edge of {width} at one end was taken for a nut slanted by {slant:.1f} degrees and its middle for the centreline{turned}.</source>
        <translation>Die gerade Kante von {width} an einem Ende gilt als Sattel, der um {slant:.1f} Grad schräg steht, und ihre Mitte als Mittellinie{turned}.</translation>
    </message>
    <message>
        <source>The straight edge of {width} at one end was taken for the nut line and its middle for the centreline{turned}.</source>
        <translation>Die gerade Kante von {width} an einem Ende wurde als Sattellinie genommen, ihre Mitte als Mittellinie{turned}.</translation>
    </message>
    <message>
        <source>The string hole and the lowest turn lie on the post.</source>
        <translation>Saitenloch und unterste Windung liegen auf der Welle.</translation>
    </message>
    <message>
        <source>The string hole of {item} lies {a} mm from the end of {own}; {b} mm wanted.</source>
        <translation>Das Saitenloch von {item} liegt {a} mm vom Ende von {own}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The string hole of {item} lies {a} mm from the {wall} of {own}; {b} mm wanted.</source>
        <translation>Das Saitenloch von {item} liegt {a} mm von der {wall} von {own}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The string hole of {item} lies {measured} mm inside the {wall} of {own}.</source>
        <translation>Das Saitenloch von {item} liegt {measured} mm innerhalb der {wall} von {own}.</translation>
    </message>
    <message>
        <source>The string needs room on both sides of the post.</source>
        <translation>Die Saite braucht auf beiden Seiten der Welle Platz.</translation>
    </message>
    <message>
        <source>The string of {item} comes off its post {a} mm above the face; {b} mm wanted.</source>
        <translation>Die Saite von {item} verlässt ihre Welle {a} mm über der Vorderseite; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The string of {item} leaves its post {a} mm along it, beyond its end at {b} mm.</source>
        <translation>Die Saite von {item} verlässt ihre Welle bei {a} mm, jenseits ihres Endes bei {b} mm.</translation>
    </message>
    <message>
        <source>The string of {item} would come off its post {below} mm below the face.</source>
        <translation>Die Saite von {item} würde ihre Welle {below} mm unter der Vorderseite verlassen.</translation>
    </message>
    <message>
        <source>The string reaches the hole in the post through the slot.</source>
        <translation>Die Saite erreicht das Loch in der Welle durch den Schlitz.</translation>
    </message>
    <message>
        <source>The string that is wound on this post.</source>
        <translation>Die Saite, die auf diese Welle gewickelt ist.</translation>
    </message>
    <message>
        <source>The string winds above the face: a thick head takes that much from what the post stands out.</source>
        <translation>Die Saite wird über der Vorderseite aufgewickelt: Eine dicke Kopfplatte nimmt entsprechend viel von dem weg, was die Welle heraussteht.</translation>
    </message>
    <message>
        <source>The strings of {id} clear its nut end: it needs no ramp.</source>
        <translation>Die Saiten von {id} laufen frei über das Sattelende: keine Rampe nötig.</translation>
    </message>
    <message>
        <source>The strings of {slot} do not come over its nut end: turn the slot so that it runs from the nut to the tip.</source>
        <translation>Die Saiten von {slot} kommen nicht über dessen Sattelende: den Schlitz so drehen, dass er vom Sattel zur Spitze läuft.</translation>
    </message>
    <message>
        <source>The strings of {slot} leave its ramp sideways: move their posts or widen the slot.</source>
        <translation>Die Saiten von {slot} verlassen die Rampe seitlich: ihre Wellen versetzen oder den Schlitz verbreitern.</translation>
    </message>
    <message>
        <source>The strings pass beside the screw that holds the retainer.</source>
        <translation>Die Saiten laufen neben der Schraube vorbei, die den Niederhalter hält.</translation>
    </message>
    <message>
        <source>The style sheets of the SVG file have far more rules than a drawing needs: export only the outline, the slots and the holes.</source>
        <translation>Die Stilvorlagen der SVG-Datei haben weit mehr Regeln, als eine Zeichnung braucht: nur den Umriss, die Schlitze und die Löcher exportieren.</translation>
    </message>
    <message>
        <source>The surface that the drill enters.</source>
        <translation>Die Fläche, in die der Bohrer eintritt.</translation>
    </message>
    <message>
        <source>The table of the drill press does not tilt that far.</source>
        <translation>Der Bohrtisch lässt sich nicht so weit neigen.</translation>
    </message>
    <message>
        <source>The template cannot hold a tongue of wood in {opening}: {lost} mm² of it would be cut.</source>
        <translation>Die Schablone kann eine Holzzunge in {opening} nicht halten: {lost} mm² davon würden weggefräst.</translation>
    </message>
    <message>
        <source>The template finds its place on {pins}.</source>
        <translation>Die Schablone findet ihren Platz auf {pins}.</translation>
    </message>
    <message>
        <source>The template for it rounds the corner of wood at {at} by {lost_depth}: a follower nearer to the size of the cutter would not.</source>
        <translation>Seine Schablone rundet die Holzecke ({at}) um {lost_depth}: eine Führung näher am Fräsermaß täte es nicht.</translation>
    </message>
    <message>
        <source>The template is larger or smaller than the cut by the offset of this bit and its follower.</source>
        <translation>Die Schablone ist um den Versatz dieses Fräsers und seiner Führung größer oder kleiner als der Schnitt.</translation>
    </message>
    <message>
        <source>The template is {template} thick and {contact} of the follower have to rub on it: take a thicker template.</source>
        <translation>Die Schablone ist {template} dick, und {contact} der Führung müssen anliegen: eine dickere Schablone nehmen.</translation>
    </message>
    <message>
        <source>The template names the bit {bit}, which is not in the rack.</source>
        <translation>Die Schablone nennt den Fräser {bit}, der nicht im Bestand ist.</translation>
    </message>
    <message>
        <source>The template names the guide bush {bush}, which is not in the rack.</source>
        <translation>Die Schablone nennt die Kopierhülse {bush}, die nicht im Bestand ist.</translation>
    </message>
    <message>
        <source>The template of sheets and files is made for {guide}, with an offset of {offset}; this plan needs {needed}.</source>
        <translation>Die Schablone der Blätter und Dateien ist für {guide} gemacht, mit Versatz {offset}; dieser Plan braucht {needed}.</translation>
    </message>
    <message>
        <source>The template of sheets and files is made for {guide}: it is the one of this plan.</source>
        <translation>Die Schablone der Blätter und Dateien ist für {guide} gemacht: es ist die dieses Plans.</translation>
    </message>
    <message>
        <source>The template opening for {id} closes up: the cutter is {offset} wider than what follows the template. Choose another bit or a wider slot.</source>
        <translation>Die Schablonenöffnung für {id} schließt sich: der Fräser ist {offset} breiter als das, was der Schablone folgt. Einen anderen Fräser oder einen breiteren Schlitz wählen.</translation>
    </message>
    <message>
        <source>The template opening for {id} falls into {found} pieces where the slot is narrow: choose a slimmer cutter.</source>
        <translation>Die Schablonenöffnung für {id} zerfällt an der schmalen Stelle in {found} Stücke: einen schlankeren Fräser wählen.</translation>
    </message>
    <message>
        <source>The template rounds the corner of wood at {at} by {depth}, because its follower is wider than the cutter: keep clear of it and finish it by hand.</source>
        <translation>Die Schablone rundet die Holzecke bei {at} um {depth}, weil ihre Führung breiter ist als der Fräser: dort wegbleiben und von Hand fertig machen.</translation>
    </message>
    <message>
        <source>The template that is made (job book) does not have {names} as it is planned now.</source>
        <translation>Auf der fertigen Schablone (Werkbuch) ist {names} nicht so, wie es jetzt geplant ist.</translation>
    </message>
    <message>
        <source>The template that is made (job book) does not have {names} as they are planned now.</source>
        <translation>Auf der fertigen Schablone (Werkbuch) sind {names} nicht so, wie sie jetzt geplant sind.</translation>
    </message>
    <message>
        <source>The template turns over for {turned}, but {worst} misses its mirror image by {a} mm, so the cut from the back would not meet the cut from the face.</source>
        <translation>Die Schablone wird für {turned} gewendet, aber {worst} verfehlt sein Spiegelbild um {a} mm; der Schnitt von der Rückseite träfe den von der Vorderseite nicht.</translation>
    </message>
    <message>
        <source>The template was not written</source>
        <translation>Die Schablone wurde nicht ausgegeben</translation>
    </message>
    <message>
        <source>The thick strings run on the treble side, as for a left-handed player: sides are named by the drawing, bass on the left and treble on the right of the face.</source>
        <translation>Die dicken Saiten laufen auf der Diskantseite, wie für Linkshänder: die Seiten heißen nach der Zeichnung, auf der Vorderseite links Bass und rechts Diskant.</translation>
    </message>
    <message>
        <source>The thin way of the button.</source>
        <translation>Die dünne Seite des Flügels.</translation>
    </message>
    <message>
        <source>The thing held first stays when the others come to it. In a row one spacing holds for all; spread, each can be moved alone again.</source>
        <translation>Das zuerst Gehaltene bleibt, die anderen kommen dazu. In einer Reihe gilt ein Abstand für alle; verteilt lässt sich jedes wieder allein versetzen.</translation>
    </message>
    <message>
        <source>The timer runs for “{title}”: stop it first.</source>
        <translation>Die Uhr läuft für „{title}“: zuerst anhalten.</translation>
    </message>
    <message>
        <source>The tolerance is a length above zero.</source>
        <translation>Die Toleranz ist eine Länge über null.</translation>
    </message>
    <message>
        <source>The treble half strays over the centreline, so it cannot be mirrored: move its nodes to their own side first.</source>
        <translation>Die Hälfte auf der Diskantseite ragt über die Mittellinie und lässt sich nicht spiegeln: zuerst ihre Knoten auf die eigene Seite setzen.</translation>
    </message>
    <message>
        <source>The two long sides of the blank. Bass is left when the face looks at you and the tip is up, whichever hand the guitar is for.</source>
        <translation>Die beiden Längsseiten des Rohlings. Bass ist links, wenn die Vorderseite zu Ihnen zeigt und die Spitze oben ist, für jede Händigkeit.</translation>
    </message>
    <message>
        <source>The two points lie on one another: move them apart, the farther the better.</source>
        <translation>Die zwei Punkte liegen aufeinander: auseinandersetzen, je weiter, desto besser.</translation>
    </message>
    <message>
        <source>The two points need a distance above zero between them.</source>
        <translation>Die zwei Punkte brauchen einen Abstand über null.</translation>
    </message>
    <message>
        <source>The unit '{name}' is not known: give mm, cm or inch.</source>
        <translation>Die Einheit '{name}' ist unbekannt: mm, cm oder inch angeben.</translation>
    </message>
    <message>
        <source>The veneer lies over {ear} and its glue line: to plane the ear flush afterwards would take the veneer off.</source>
        <translation>Das Furnier liegt über {ear} und der Leimfuge: das Ohr danach bündig zu hobeln nähme das Furnier weg.</translation>
    </message>
    <message>
        <source>The veneer would cover what is open by then, and nothing lies under it there while it is glued and cut.</source>
        <translation>Das Furnier würde zudecken, was dann schon offen ist, und beim Leimen und Schneiden läge dort nichts unter ihm.</translation>
    </message>
    <message>
        <source>The veneer would lie over open holes that nothing fills any more.</source>
        <translation>Das Furnier läge über offenen Löchern, die nichts mehr füllt.</translation>
    </message>
    <message>
        <source>The veneers leave less than {least} mm of wood between them: the thickness is measured from face to back, veneers and all.</source>
        <translation>Die Furniere lassen weniger als {least} mm Holz zwischen sich: Die Dicke wird von der Vorderseite zur Rückseite gemessen, mitsamt Furnieren.</translation>
    </message>
    <message>
        <source>The version before</source>
        <translation>Die Fassung davor</translation>
    </message>
    <message>
        <source>The version before was not opened</source>
        <translation>Die Fassung davor wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>The versions are on the clipboard.</source>
        <translation>Die Versionen sind in der Zwischenablage.</translation>
    </message>
    <message>
        <source>The wall between a ramp and a pocket that is there breaks away where it is thin.</source>
        <translation>Die Wand zwischen einer Rampe und einer vorhandenen Tasche bricht aus, wo sie dünn ist.</translation>
    </message>
    <message>
        <source>The wall of {opening} crosses itself at {x}, {y}.</source>
        <translation>Die Wand von {opening} kreuzt sich selbst bei {x}; {y}.</translation>
    </message>
    <message>
        <source>The wall of {slot} crosses itself or shuts nothing in: mend that first.</source>
        <translation>Die Wand von {slot} kreuzt sich selbst oder schließt nichts ein: zuerst das richten.</translation>
    </message>
    <message>
        <source>The walls of {slots} meet too closely to be joined: move one of them a little.</source>
        <translation>Die Wände von {slots} liegen zu knapp aneinander, um vereint zu werden: einen davon ein wenig verschieben.</translation>
    </message>
    <message>
        <source>The waste needs {stop} of drilling to come through, and the quill of the drill press travels {quill}.</source>
        <translation>Zum Durchkommen braucht es {stop} Bohrtiefe, und der Pinolenhub beträgt {quill}.</translation>
    </message>
    <message>
        <source>The waste needs {stop} of drilling to come through, and {drill} is {length} long.</source>
        <translation>Zum Durchkommen braucht es {stop} Bohrtiefe, und {drill} ist {length} lang.</translation>
    </message>
    <message>
        <source>The way along an edge is a finite number of mm.</source>
        <translation>Der Weg entlang einer Kante ist eine endliche Zahl von mm.</translation>
    </message>
    <message>
        <source>The web between {one} and {two} is {a} mm; {b} mm wanted.</source>
        <translation>Der Steg zwischen {one} und {two} ist {a} mm breit; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>The web is the wood between two slots, or a slot and a pocket that is there.</source>
        <translation>Der Steg ist das Holz zwischen zwei Schlitzen oder zwischen einem Schlitz und einer vorhandenen Tasche.</translation>
    </message>
    <message>
        <source>The weights of a spline must be above zero.</source>
        <translation>Die Gewichte eines Splines müssen über null liegen.</translation>
    </message>
    <message>
        <source>The whole head is mirrored, the sides named here with it.</source>
        <translation>Die ganze Kopfplatte wird gespiegelt, die hier genannten Seiten mit ihr.</translation>
    </message>
    <message>
        <source>The windings need air below the post.</source>
        <translation>Die Windungen brauchen Luft unter der Welle.</translation>
    </message>
    <message>
        <source>The wood before it is shaped, with square edges. A vice holds it and a rule finds places on it only as long as those edges are there.</source>
        <translation>Das Holz vor dem Formen, mit geraden Kanten. Nur solange es sie gibt, hält es ein Schraubstock und findet ein Maßstab Orte darauf.</translation>
    </message>
    <message>
        <source>The wood between a ramp and another slot, or its ramp, breaks away where it is thin.</source>
        <translation>Das Holz zwischen einer Rampe und einem anderen Schlitz oder dessen Rampe bricht aus, wo es dünn ist.</translation>
    </message>
    <message>
        <source>The wood between a slot and the outline; side bores go through it.</source>
        <translation>Das Holz zwischen Schlitz und Umriss; die Seitenbohrungen gehen hindurch.</translation>
    </message>
    <message>
        <source>The wood between nut and slot carries the pull of the strings.</source>
        <translation>Das Holz zwischen Sattel und Schlitz trägt den Zug der Saiten.</translation>
    </message>
    <message>
        <source>The wood between two slots, or a slot and a pocket that is there.</source>
        <translation>Das Holz zwischen zwei Schlitzen oder zwischen einem Schlitz und einer vorhandenen Tasche.</translation>
    </message>
    <message>
        <source>The wood is too thin: it takes {least} mm for this bore.</source>
        <translation>Das Holz ist zu dünn: diese Bohrung braucht {least} mm.</translation>
    </message>
    <message>
        <source>The wood is too thin: it takes {least} mm for this plate.</source>
        <translation>Das Holz ist zu dünn: diese Platte braucht {least} mm.</translation>
    </message>
    <message>
        <source>The wood left below a blind slot gives way under router and chisel.</source>
        <translation>Das Holz, das unter einem nicht durchgehenden Schlitz stehen bleibt, gibt unter Oberfräse und Stecheisen nach.</translation>
    </message>
    <message>
        <source>The wood stands {by} mm beyond it at either end.</source>
        <translation>Das Holz steht an beiden Enden {by} mm über ihn hinaus.</translation>
    </message>
    <message>
        <source>The wood, its ears, and the margins wanted.</source>
        <translation>Das Holz, seine Ohren und die gewünschten Mindestabstände.</translation>
    </message>
    <message>
        <source>The words hold half a character, which no file can keep: type them again.</source>
        <translation>Die Worte enthalten ein halbes Zeichen, das keine Datei behalten kann: neu eingeben.</translation>
    </message>
    <message>
        <source>The wrap paper folds round the outer face of {feature}: without the ear there is no edge to paste it on.</source>
        <translation>Der Hüllbogen wird um die Außenseite von {feature} gefaltet: ohne das Ohr gibt es keine Kante zum Aufkleben.</translation>
    </message>
    <message>
        <source>The {bearing} bearing does not pass through the guide bush "{bush}" with a bore of {bore}: take it off, choose a wider bush or another bit.</source>
        <translation>Der Anlaufring mit {bearing} passt nicht durch die Kopierhülse „{bush}“ mit {bore} Bohrung: ihn abnehmen, eine weitere Hülse oder einen anderen Fräser wählen.</translation>
    </message>
    <message>
        <source>The {cutter} cutter does not pass through the guide bush "{bush}" with a bore of {bore}: choose a wider bush or a slimmer bit.</source>
        <translation>Der Fräser mit {cutter} passt nicht durch die Kopierhülse „{bush}“ mit {bore} Bohrung: eine weitere Hülse oder einen schlankeren Fräser wählen.</translation>
    </message>
    <message>
        <source>The {cutter} mm bit</source>
        <translation>Der Fräser mit {cutter} mm</translation>
    </message>
    <message>
        <source>The {cutter} mm cutter does not enter {opening}, which is {a} mm wide.</source>
        <translation>Der Fräser mit {cutter} mm passt nicht in {opening}: nur {a} mm breit.</translation>
    </message>
    <message>
        <source>The {cutter} mm cutter does not pass the narrowest place of {opening}, which is {a} mm wide.</source>
        <translation>Der Fräser mit {cutter} mm passt nicht durch die engste Stelle von {opening}, die {a} mm breit ist.</translation>
    </message>
    <message>
        <source>The {name} bar was measured as {length:g} mm: between {least:g} and {most:g} mm can be corrected, more is a page that was scaled. Print it again at 100 %.</source>
        <translation>Der {name} Balken wurde mit {length:g} mm gemessen: zwischen {least:g} und {most:g} mm lässt sich korrigieren, mehr ist eine skalierte Seite. Noch einmal mit 100 % drucken.</translation>
    </message>
    <message>
        <source>The {name} bar would need a correction by {factor:.3f}, which no printer needs: measure a page that was printed without correction.</source>
        <translation>Der {name} Balken bräuchte eine Korrektur um {factor:.3f}, die kein Drucker braucht: eine Seite messen, die ohne Korrektur gedruckt wurde.</translation>
    </message>
    <message>
        <source>The {name} is {width} x {height} and would take {rows} pages of {paper}: bring in what lies far outside the head, or choose a larger paper.</source>
        <translation>{name}: {width} x {height}, das gäbe {rows} Seiten {paper}: hereinholen, was weit außerhalb der Kopfplatte liegt, oder ein größeres Papier wählen.</translation>
    </message>
    <message>
        <source>The {operation} of {item} goes {deep} mm deep, to the drill's point; the drill is only {most} mm long.</source>
        <translation>{operation} von {item} ist {deep} mm tief, bis zur Bohrerspitze; der Bohrer ist nur {most} mm lang.</translation>
    </message>
    <message>
        <source>The {operation} of {item} goes {deep} mm deep, to the drill's point; the quill travels {most} mm.</source>
        <translation>{operation} von {item} ist {deep} mm tief, bis zur Bohrerspitze; der Pinolenhub beträgt {most} mm.</translation>
    </message>
    <message>
        <source>The {shank} shank does not pass through the guide bush "{bush}" with a bore of {bore}: choose a wider bush or a slimmer bit.</source>
        <translation>Der Schaft von {shank} passt nicht durch die Kopierhülse „{bush}“ mit {bore} Bohrung: eine weitere Hülse oder einen schlankeren Fräser wählen.</translation>
    </message>
    <message>
        <source>Then saw it out to within {light} of the line.</source>
        <translation>Dann bis auf {light} an die Linie aussägen.</translation>
    </message>
    <message>
        <source>There already</source>
        <translation>Schon da</translation>
    </message>
    <message>
        <source>There are no locating pins.</source>
        <translation>Es gibt keine Passstifte.</translation>
    </message>
    <message>
        <source>There are no pages to print yet.</source>
        <translation>Es gibt noch keine Seiten zu drucken.</translation>
    </message>
    <message>
        <source>There are no pages to print.</source>
        <translation>Es gibt keine Seiten zu drucken.</translation>
    </message>
    <message>
        <source>There are no snags.</source>
        <translation>Es gibt keine Haken.</translation>
    </message>
    <message>
        <source>There are {most} strings already: no more can be added.</source>
        <translation>Es sind schon {most} Saiten: mehr gehen nicht.</translation>
    </message>
    <message>
        <source>There are {strings} strings and only {tuners} posts: add tuners first.</source>
        <translation>Es sind {strings} Saiten und nur {tuners} Wellen: zuerst Mechaniken hinzufügen.</translation>
    </message>
    <message>
        <source>There are {strings} strings: from {least} to {most} work.</source>
        <translation>Es sind {strings} Saiten: möglich sind {least} bis {most}.</translation>
    </message>
    <message>
        <source>There are {strings} strings; from {least} to {most} work: give the {side} side {value}.</source>
        <translation>Es sind {strings} Saiten; möglich sind {least} bis {most}: auf der Seite {side} {value} angeben.</translation>
    </message>
    <message>
        <source>There is a node at this place already.</source>
        <translation>An diesem Ort ist schon ein Knoten.</translation>
    </message>
    <message>
        <source>There is no display to open a window on (neither DISPLAY nor WAYLAND_DISPLAY is set): start from a desktop, or use a command that needs none: {named} ({program} --help tells about them).</source>
        <translation>Es gibt keinen Bildschirm für ein Fenster (weder DISPLAY noch WAYLAND_DISPLAY ist gesetzt): von einer Arbeitsfläche aus starten, oder einen Befehl nehmen, der keinen braucht: {named} ({program} --help sagt mehr über sie).</translation>
    </message>
    <message>
        <source>There is no drilling called "{id}".</source>
        <translation>Es gibt keine Bohrung namens „{id}“.</translation>
    </message>
    <message>
        <source>There is no edge to cut the flat into yet.</source>
        <translation>Es gibt noch keine Kante für die Fläche.</translation>
    </message>
    <message>
        <source>There is no file {path}: check its name and folder.</source>
        <translation>Eine Datei {path} gibt es nicht: Name und Ordner prüfen.</translation>
    </message>
    <message>
        <source>There is no hole to thread the blade through.</source>
        <translation>Es gibt kein Loch zum Einfädeln des Sägeblatts.</translation>
    </message>
    <message>
        <source>There is no mark to work from yet.</source>
        <translation>Es gibt noch keinen Anriss zum Arbeiten.</translation>
    </message>
    <message>
        <source>There is no order yet: {error}</source>
        <translation>Noch gibt es keine Folge: {error}</translation>
    </message>
    <message>
        <source>There is no paper called {name}: choose one of {papers}.</source>
        <translation>Ein Papier namens {name} gibt es nicht: eines von {papers} wählen.</translation>
    </message>
    <message>
        <source>There is no plan for the outline: it crosses itself or shuts nothing in. Move its nodes until it does not.</source>
        <translation>Für den Umriss gibt es keinen Plan: er kreuzt sich selbst oder umschließt nichts. Seine Knoten verschieben, bis er es nicht mehr tut.</translation>
    </message>
    <message>
        <source>There is no plan for the outline: {why}</source>
        <translation>Für den Umriss gibt es keinen Plan: {why}</translation>
    </message>
    <message>
        <source>There is no plan for {slot}: its wall crosses itself or shuts nothing in. Move the nodes of {slot} until it does not.</source>
        <translation>Für {slot} gibt es keinen Plan: seine Wand kreuzt sich selbst oder umschließt nichts. Die Knoten von {slot} verschieben, bis sie es nicht mehr tut.</translation>
    </message>
    <message>
        <source>There is no plan for {slot}: {why}</source>
        <translation>Für {slot} gibt es keinen Plan: {why}</translation>
    </message>
    <message>
        <source>There is no plan to hold the hours against: {error}</source>
        <translation>Es gibt keinen Plan, an dem die Stunden zu messen wären: {error}</translation>
    </message>
    <message>
        <source>There is no plan: {error}</source>
        <translation>Es gibt keinen Plan: {error}</translation>
    </message>
    <message>
        <source>There is no post here: press on a tuner to change over the side of its string.</source>
        <translation>Hier ist keine Welle: eine Mechanik anklicken, um die Saitenseite zu wechseln.</translation>
    </message>
    <message>
        <source>There is no router plan: {trouble}</source>
        <translation>Es gibt keinen Fräsplan: {trouble}</translation>
    </message>
    <message>
        <source>There is no slot named {slot_id}.</source>
        <translation>Es gibt keinen Schlitz namens {slot_id}.</translation>
    </message>
    <message>
        <source>There is no snag.</source>
        <translation>Es gibt keinen Haken.</translation>
    </message>
    <message>
        <source>There is no string named {id}.</source>
        <translation>Es gibt keine Saite namens {id}.</translation>
    </message>
    <message>
        <source>There is no template to work along.</source>
        <translation>Es gibt noch keine Schablone zum Folgen.</translation>
    </message>
    <message>
        <source>There is no tuner named {tuner}.</source>
        <translation>Es gibt keine Mechanik namens {tuner}.</translation>
    </message>
    <message>
        <source>There is no tuner yet: place one, or hold holes that are meant for tuners and choose their hardware.</source>
        <translation>Es gibt noch keine Mechanik: eine setzen, oder Löcher halten, die für Mechaniken gedacht sind, und deren Mechanik wählen.</translation>
    </message>
    <message>
        <source>There is no version before this one: it is kept from the second saving on.</source>
        <translation>Es gibt keine Fassung vor dieser: aufbewahrt wird ab dem zweiten Speichern.</translation>
    </message>
    <message>
        <source>There is nothing named {old} in {group}.</source>
        <translation>In {group} gibt es nichts namens {old}.</translation>
    </message>
    <message>
        <source>There is nothing on the {source} side to copy.</source>
        <translation>Auf der Seite {source} gibt es nichts zu kopieren.</translation>
    </message>
    <message>
        <source>There is nothing to paste: copy tuners, slots, pins or holes first.</source>
        <translation>Es gibt nichts einzufügen: zuerst Mechaniken, Schlitze, Stifte oder Bohrungen kopieren.</translation>
    </message>
    <message>
        <source>There is nothing to print yet: the wall of {broken} crosses itself or shuts nothing in.</source>
        <translation>Noch ist nichts zu drucken: die Wand von {broken} kreuzt sich selbst oder umschließt nichts.</translation>
    </message>
    <message>
        <source>There is nothing to print yet: {error}</source>
        <translation>Noch ist nichts zu drucken: {error}</translation>
    </message>
    <message>
        <source>There is nothing to rename in {group}.</source>
        <translation>In {group} gibt es nichts umzubenennen.</translation>
    </message>
    <message>
        <source>There is only one locating pin.</source>
        <translation>Es gibt nur einen Passstift.</translation>
    </message>
    <message>
        <source>These are readings of the practice piece; the panel has the choice.</source>
        <translation>Dies sind Messwerte des Probestücks; die Wahl steht rechts.</translation>
    </message>
    <message>
        <source>These are readings of the real piece; the panel has the choice.</source>
        <translation>Dies sind Messwerte des echten Stücks; die Wahl steht rechts.</translation>
    </message>
    <message>
        <source>These are the pages: print them with Ctrl+P.</source>
        <translation>Das sind die Seiten: mit Strg+P drucken.</translation>
    </message>
    <message>
        <source>These come before those, or the work is spoiled or cannot be done any more:</source>
        <translation>Diese kommen vor jenen, sonst ist die Arbeit verdorben oder nicht mehr möglich:</translation>
    </message>
    <message>
        <source>These four corners fix no plane: move them apart.</source>
        <translation>Diese vier Ecken legen keine Ebene fest: auseinandersetzen.</translation>
    </message>
    <message>
        <source>These tuners lie along both edges: choose those of one side.</source>
        <translation>Diese Mechaniken liegen an beiden Kanten: die einer Seite wählen.</translation>
    </message>
    <message>
        <source>They are on the wrap paper too.</source>
        <translation>Sie stehen auch auf dem Hüllbogen.</translation>
    </message>
    <message>
        <source>Thickest head it clamps</source>
        <translation>Dickste Kopfplatte, die sie klemmt</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Thickness less the veneers. Typed here, it makes the whole thicker or thinner.</source>
        <translation>Die Dicke ohne die Furniere. Hier eingegeben, macht sie das Ganze dicker oder dünner.</translation>
    </message>
    <message>
        <source>Thin circles in the slots: waste holes.</source>
        <translation>Dünne Kreise in den Schlitzen: Räumbohrungen.</translation>
    </message>
    <message>
        <source>Thin: under its margin. Spoiled: no wood left.</source>
        <translation>Dünn: unter dem Mindestabstand. Verdorben: kein Holz übrig.</translation>
    </message>
    <message>
        <source>Thing &amp;before</source>
        <translation>&amp;Teil davor</translation>
    </message>
    <message>
        <source>Thinnest head it clamps</source>
        <translation>Dünnste Kopfplatte, die sie klemmt</translation>
    </message>
    <message>
        <source>This can be done with ears, slots, tuners, pins and holes, but not with the {thing}.</source>
        <translation>Das geht mit Ohren, Schlitzen, Mechaniken, Stiften und Löchern, aber nicht mit dem {thing}.</translation>
    </message>
    <message>
        <source>This drawing was not imported</source>
        <translation>Diese Zeichnung wurde nicht eingelesen</translation>
    </message>
    <message>
        <source>This edge has no length, so it cannot be bent: move its node instead.</source>
        <translation>Diese Kante hat keine Länge und lässt sich nicht biegen: stattdessen ihren Knoten versetzen.</translation>
    </message>
    <message>
        <source>This edge has no length: remove one of its nodes.</source>
        <translation>Diese Kante hat keine Länge: einen ihrer Knoten entfernen.</translation>
    </message>
    <message>
        <source>This edge is all corners: choose a cleaner picture or another level of grey.</source>
        <translation>Diese Kante besteht nur aus Ecken: ein saubereres Bild oder einen anderen Grauwert wählen.</translation>
    </message>
    <message>
        <source>This edge is no curve, so it has no handles: make it a curve first.</source>
        <translation>Diese Kante ist keine Kurve und hat keine Griffe: zuerst in eine Kurve umwandeln.</translation>
    </message>
    <message>
        <source>This edge is too small to be an outline.</source>
        <translation>Diese Kante ist für einen Umriss zu klein.</translation>
    </message>
    <message>
        <source>This file was not opened</source>
        <translation>Diese Datei wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>This hardware comes as left and right, mirror images of each other: a screw beside the post changes sides. On a head with tuners on both edges each edge usually wants its own.</source>
        <translation>Diese Mechanik gibt es links und rechts, als Spiegelbilder: eine Schraube neben der Welle wechselt die Seite. Eine Kopfplatte mit Mechaniken an beiden Kanten braucht meist an jeder die ihren.</translation>
    </message>
    <message>
        <source>This hardware is its own mirror image: there is no left and right of it.</source>
        <translation>Diese Mechanik ist ihr eigenes Spiegelbild: es gibt sie nicht links und rechts.</translation>
    </message>
    <message>
        <source>This head is {head} wide, so a blank {width} wide is too narrow: make it {wide} wide, or glue ears on to that width.</source>
        <translation>Diese Kopfplatte ist {head} breit, ein Rohling von {width} ist zu schmal: {wide} breit machen oder Ohren bis zu dieser Breite anleimen.</translation>
    </message>
    <message>
        <source>This hole is no longer in the layout: nothing was written down.</source>
        <translation>Diese Bohrung ist nicht mehr im Entwurf: nichts wurde eingetragen.</translation>
    </message>
    <message>
        <source>This is common practice, no source.</source>
        <translation>Das ist übliche Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>This layout</source>
        <translation>Dieser Entwurf</translation>
    </message>
    <message>
        <source>This map flattens the picture to a line.</source>
        <translation>Diese Abbildung drückt das Bild zu einer Linie zusammen.</translation>
    </message>
    <message>
        <source>This outline in the layout that is open</source>
        <translation>Dieser Umriss in den offenen Entwurf</translation>
    </message>
    <message>
        <source>This outline, its slots and holes in the layout that is open</source>
        <translation>Umriss, Schlitze und Bohrungen in den offenen Entwurf</translation>
    </message>
    <message>
        <source>This picture was not laid behind the drawing</source>
        <translation>Dieses Bild wurde nicht hinter die Zeichnung gelegt</translation>
    </message>
    <message>
        <source>This piece of the path has no length.</source>
        <translation>Dieses Stück des Pfads hat keine Länge.</translation>
    </message>
    <message>
        <source>This point of the picture lies on the horizon: choose one nearer the head.</source>
        <translation>Dieser Bildpunkt liegt auf dem Horizont: einen näher an der Kopfplatte wählen.</translation>
    </message>
    <message>
        <source>This rack is now yours, for all layouts.</source>
        <translation>Dieser Bestand ist nun Ihrer, für alle Entwürfe.</translation>
    </message>
    <message>
        <source>This rack was not exported</source>
        <translation>Dieser Bestand wurde nicht ausgegeben</translation>
    </message>
    <message>
        <source>This rack was not imported</source>
        <translation>Dieser Bestand wurde nicht eingelesen</translation>
    </message>
    <message>
        <source>This sample was not opened</source>
        <translation>Dieses Beispiel wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>This step has left the running order meanwhile: type the time at another one.</source>
        <translation>Dieser Schritt ist inzwischen nicht mehr in der Folge: die Zeit bei einem anderen eintragen.</translation>
    </message>
    <message>
        <source>This step is spoiled or unsafe where it stands. Drag it, or go back to the best order.</source>
        <translation>Dieser Schritt ist hier verdorben oder unsicher. Ziehen Sie ihn an eine andere Stelle oder gehen Sie zur besten Folge zurück.</translation>
    </message>
    <message>
        <source>This would flatten or mirror the line.</source>
        <translation>Das würde die Linie flachdrücken oder spiegeln.</translation>
    </message>
    <message>
        <source>This would leave a loop without area.</source>
        <translation>Das ließe eine Linie ohne Fläche zurück.</translation>
    </message>
    <message>
        <source>Thread the blade through a waste hole and saw out {slot} to within {light} of its line.</source>
        <translation>Das Sägeblatt durch eine Räumbohrung fädeln und {slot} bis auf {light} an die Linie aussägen.</translation>
    </message>
    <message>
        <source>Threaded bushing through the face, cast body on the back, one screw at 45 degrees.</source>
        <translation>Schraubbuchse durch die Vorderseite, gegossenes Gehäuse auf der Rückseite, eine Schraube unter 45 Grad.</translation>
    </message>
    <message>
        <source>Three a side, through the face</source>
        <translation>Drei je Seite, durch die Vorderseite</translation>
    </message>
    <message>
        <source>Three lines of {sized} at ({x:.2f}, {y:.2f}) run from corner to corner of an outline, as a dimension does, and were left out.</source>
        <translation>Drei Linien von {sized} bei ({x:.2f}, {y:.2f}) laufen von Ecke zu Ecke eines Umrisses, wie die eines Maßes, und wurden weggelassen.</translation>
    </message>
    <message>
        <source>Three of the corners lie on one line, or two on one another: move them apart.</source>
        <translation>Drei der Ecken liegen auf einer Linie oder zwei aufeinander: auseinandersetzen.</translation>
    </message>
    <message>
        <source>Three points on a straight line make no arc.</source>
        <translation>Drei Punkte auf einer Geraden ergeben keinen Bogen.</translation>
    </message>
    <message>
        <source>Throat</source>
        <translation>Ausladung</translation>
    </message>
    <message>
        <source>Through the plate on its seat and square to it, the post in its bore: {diameter} wide, {depth} deep.</source>
        <translation>Durch die Platte auf ihrem Sitz und rechtwinklig zu ihr, die Welle in der Bohrung: {diameter} weit, {depth} tief.</translation>
    </message>
    <message>
        <source>Throw away pages and cards of another plan than {plan}: places, tools or numbers of steps may be others there.</source>
        <translation>Seiten und Karten eines anderen Plans als {plan} wegwerfen: Lagen, Werkzeuge oder Nummern von Schritten können dort andere sein.</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Throw it away for good</source>
        <translation>Endgültig wegwerfen</translation>
    </message>
    <message>
        <source>Throw this work away?</source>
        <translation>Diese Arbeit wegwerfen?</translation>
    </message>
    <message>
        <source>Ticked: done, by the job book ({piece}). A stroke: begun. What is done keeps its number.</source>
        <translation>Abgehakt: erledigt, laut Werkbuch ({piece}). Ein Strich: angefangen. Was erledigt ist, behält seine Nummer.</translation>
    </message>
    <message>
        <source>Ticks, hours and readings are of the piece chosen here. No proposal moves what is done on the real piece, and a snag says what is drawn otherwise; the practice piece binds nothing.</source>
        <translation>Häkchen, Stunden und Messwerte gelten dem hier gewählten Stück. Was am echten Stück getan ist, versetzt kein Vorschlag, und ein Haken sagt, was anders gezeichnet ist; das Probestück bindet nichts.</translation>
    </message>
    <message>
        <source>Tilt</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>Tilt beyond the table</source>
        <translation>Neigung größer, als der Tisch kann</translation>
    </message>
    <message>
        <source>Tilt of the table</source>
        <translation>Neigung des Tisches</translation>
    </message>
    <message>
        <source>Time of {title}</source>
        <translation>Zeit von {title}</translation>
    </message>
    <message>
        <source>Time the step of the row, for the piece on the bench.</source>
        <translation>Den Schritt der Zeile stoppen, für das Stück auf der Werkbank.</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>Timer {hours}:{minutes:02d}:{rest:02d} · {title}</source>
        <translation>Uhr {hours}:{minutes:02d}:{rest:02d} · {title}</translation>
    </message>
    <message>
        <source>Tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Tip end, across</source>
        <translation>Spitzenende, quer</translation>
    </message>
    <message>
        <source>Tip end, along</source>
        <translation>Spitzenende, längs</translation>
    </message>
    <message>
        <source>To fill in with a caliper once the piece is finished: what is measured against the plan.</source>
        <translation>Mit dem Messschieber auszufüllen, wenn das Stück fertig ist: Gemessenes gegen den Plan.</translation>
    </message>
    <message>
        <source>To full diameter. Shallower leaves wood of the rail standing, deeper brings the drill's point into the inner wall of the slot.</source>
        <translation>Bis zum vollen Durchmesser. Flacher bleibt Holz der Wange stehen, tiefer kommt die Bohrerspitze in die Innenwand des Schlitzes.</translation>
    </message>
    <message>
        <source>To have what is still to be done checked against a hole as it came out: draw it so (Tuners stage) and tick its step again (Order stage).</source>
        <translation>Damit alles, was noch zu tun ist, gegen ein Loch geprüft wird, wie es ausgefallen ist: es so zeichnen (Bereich Mechaniken) und seinen Schritt noch einmal abhaken (Bereich Folge).</translation>
    </message>
    <message>
        <source>To look at later: {titles}.</source>
        <translation>Später anzusehen: {titles}.</translation>
    </message>
    <message>
        <source>To put its bearing on the template below it needs {needed} under the base, and it stands only {has} out of it.</source>
        <translation>Damit sein Anlaufring die Schablone darunter erreicht, braucht er {needed} unter der Fußplatte, und er steht nur {has} vor.</translation>
    </message>
    <message>
        <source>To put its bearing on the template below it needs {needed} under the base, and the router plunges only {has}.</source>
        <translation>Damit sein Anlaufring die Schablone darunter erreicht, braucht er {needed} unter der Fußplatte, und die Oberfräse taucht nur {has} tief ein.</translation>
    </message>
    <message>
        <source>To spread tuners evenly takes at least three of them.</source>
        <translation>Zum gleichmäßigen Verteilen braucht es mindestens drei.</translation>
    </message>
    <message>
        <source>To the drawing, or to what stands in its place; a number typed there is for the tool</source>
        <translation>Zur Zeichnung oder zu dem, was an ihrer Stelle steht; eine dort getippte Zahl ist für das Werkzeug</translation>
    </message>
    <message>
        <source>To the left of the way from post to button, seen on the face; to the right below zero.</source>
        <translation>Nach links vom Weg Welle–Flügel, von vorn gesehen; nach rechts unter null.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Too few to go by.</source>
        <translation>Zu wenige, um sich darauf zu verlassen.</translation>
    </message>
    <message>
        <source>Tools and clamps mark the finish.</source>
        <translation>Werkzeuge und Zwingen hinterlassen Spuren im Lack.</translation>
    </message>
    <message>
        <source>Trace the picture</source>
        <translation>Das Bild nachziehen</translation>
    </message>
    <message>
        <source>Trace {picture}</source>
        <translation>{picture} nachziehen</translation>
    </message>
    <message>
        <source>Traced</source>
        <translation>Nachgezogen</translation>
    </message>
    <message>
        <source>Treble</source>
        <translation>Diskant</translation>
    </message>
    <message>
        <source>Treble slots and tuners, mirrored to the bass side.</source>
        <translation>Schlitze und Mechaniken der Diskantseite, auf die Bassseite gespiegelt.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Tuned to</source>
        <translation>Gestimmt auf</translation>
    </message>
    <message>
        <source>Tuner {id} does not follow an edge, so it cannot slide along one.</source>
        <translation>Mechanik {id} folgt keiner Kante und lässt sich nicht daran verschieben.</translation>
    </message>
    <message>
        <source>Tuner {id} is in no row.</source>
        <translation>Mechanik {id} steht in keiner Reihe.</translation>
    </message>
    <message>
        <source>Tuner {id} is placed by its row: free it first.</source>
        <translation>Mechanik {id} wird von ihrer Reihe gesetzt: zuerst lösen.</translation>
    </message>
    <message>
        <source>Tuner {id} mounts through the side, so it stands square to its edge and has no turn.</source>
        <translation>Mechanik {id} sitzt in der Seite, steht rechtwinklig zu ihrer Kante und hat keine Drehung.</translation>
    </message>
    <message>
        <source>Tuner {id} takes its turn from its row: free it first.</source>
        <translation>Mechanik {id} bekommt ihre Drehung von der Reihe: zuerst lösen.</translation>
    </message>
    <message>
        <source>Tuner {tuner} is spaced by its row already: free it first.</source>
        <translation>Mechanik {tuner} wird schon von ihrer Reihe verteilt: zuerst lösen.</translation>
    </message>
    <message>
        <source>Tuner {tuner} mounts through the face, so its place is a point or a row.</source>
        <translation>Mechanik {tuner} sitzt in der Vorderseite, ihr Ort ist ein Punkt oder eine Reihe.</translation>
    </message>
    <message>
        <source>Tuner {tuner} mounts through the side, so its place is on an edge.</source>
        <translation>Mechanik {tuner} sitzt in der Seite, ihr Ort liegt auf einer Kante.</translation>
    </message>
    <message>
        <source>Tuner {tuner} mounts through the side, so its row must follow an edge, with no inset.</source>
        <translation>Mechanik {tuner} sitzt in der Seite, ihre Reihe muss einer Kante ohne Abstand von ihr folgen.</translation>
    </message>
    <message>
        <source>Tuner {tuner} names the pattern {pattern}, which the layout does not have.</source>
        <translation>Mechanik {tuner} nennt das Bohrbild {pattern}, das der Entwurf nicht hat.</translation>
    </message>
    <message>
        <source>Tuner {tuner} names the string {string}, which the layout does not have.</source>
        <translation>Mechanik {tuner} nennt die Saite {string}, die der Entwurf nicht hat.</translation>
    </message>
    <message>
        <source>Tuner {tuner} stands in the row {row}, which the layout does not have.</source>
        <translation>Mechanik {tuner} steht in der Reihe {row}, die der Entwurf nicht hat.</translation>
    </message>
    <message>
        <source>Tuners</source>
        <translation>Mechaniken</translation>
    </message>
    <message>
        <source>Tuners in their places</source>
        <translation>Mechaniken an ihrer Stelle</translation>
    </message>
    <message>
        <source>Tuners marked “Leave it where it is” stay, and so do those with a hole that the job book has as drilled in the real piece.</source>
        <translation>Mechaniken mit „Lassen, wo sie ist“ bleiben, und ebenso die, von denen laut Werkbuch ein Loch im echten Stück gebohrt ist.</translation>
    </message>
    <message>
        <source>Tuners through the face and through the side cannot share a row.</source>
        <translation>Mechaniken durch die Vorderseite und durch die Seite können keine Reihe teilen.</translation>
    </message>
    <message>
        <source>Tuners, bass side</source>
        <translation>Mechaniken, Bassseite</translation>
    </message>
    <message>
        <source>Tuners, treble side</source>
        <translation>Mechaniken, Diskantseite</translation>
    </message>
    <message>
        <source>Turn left</source>
        <translation>Links drehen</translation>
    </message>
    <message>
        <source>Turn right</source>
        <translation>Rechts drehen</translation>
    </message>
    <message>
        <source>Turn the head; + and - come closer or step back</source>
        <translation>Die Kopfplatte drehen; + und - holen heran oder gehen zurück</translation>
    </message>
    <message>
        <source>Turn the picture</source>
        <translation>Bild drehen</translation>
    </message>
    <message>
        <source>Turn the piece over</source>
        <translation>Das Stück wenden</translation>
    </message>
    <message>
        <source>Turn the template over on its pins and finish from the back, or choose a longer bit.</source>
        <translation>Die Schablone auf ihren Stiften wenden und von der Rückseite fertig fräsen oder einen längeren Fräser wählen.</translation>
    </message>
    <message>
        <source>Turn the template over on its pins, or choose another thickness of template.</source>
        <translation>Die Schablone auf ihren Stiften wenden oder eine andere Schablonendicke wählen.</translation>
    </message>
    <message>
        <source>Turn the wood over, back up.</source>
        <translation>Das Holz wenden, Rückseite oben.</translation>
    </message>
    <message>
        <source>Turn wood and template over on the same two pins, back up.</source>
        <translation>Holz und Schablone auf denselben zwei Stiften wenden, Rückseite oben.</translation>
    </message>
    <message>
        <source>Turned over on {used} the template does not come back to its place: they are not mirrored about the centreline. Move them, or have two pins proposed.</source>
        <translation>Gewendet kommt die Schablone auf {used} nicht an ihren Platz zurück: sie sind nicht spiegelbildlich zur Mittellinie. Versetzen oder zwei Stifte vorschlagen lassen.</translation>
    </message>
    <message>
        <source>Turned over, the template comes back to its place only on pins that are each other's mirror image.</source>
        <translation>Gewendet kommt die Schablone nur auf spiegelbildlichen Stiften an ihren Platz zurück.</translation>
    </message>
    <message>
        <source>Turning the template over needs two locating pins through template and blank: place them first.</source>
        <translation>Zum Wenden der Schablone braucht es zwei Passstifte durch Schablone und Rohling: zuerst setzen.</translation>
    </message>
    <message>
        <source>Twelve strings, all through the face</source>
        <translation>Zwölf Saiten, alle durch die Vorderseite</translation>
    </message>
    <message>
        <source>Twelve strings, mixed</source>
        <translation>Zwölf Saiten, gemischt</translation>
    </message>
    <message>
        <source>Twelve strings, one slide too far</source>
        <translation>Zwölf Saiten, einmal zu weit geschoben</translation>
    </message>
    <message>
        <source>Two bring the template back to the same place.</source>
        <translation>Zwei bringen die Schablone an denselben Platz zurück.</translation>
    </message>
    <message>
        <source>Two by two from the bass side on; each string below says whether it shares a course with the one above it.</source>
        <translation>Je zwei, von der Bassseite an; jede Saite weiter unten sagt, ob sie mit der über ihr einen Chor teilt.</translation>
    </message>
    <message>
        <source>Two halves of a head that meet in a straight edge were taken as one.</source>
        <translation>Zwei Hälften einer Kopfplatte, die an einer geraden Kante zusammenstoßen, wurden als eine genommen.</translation>
    </message>
    <message>
        <source>Two locating pins where the wood allows them, to take or leave.</source>
        <translation>Zwei Passstifte, wo das Holz es erlaubt, zum Annehmen oder Lassen.</translation>
    </message>
    <message>
        <source>Two or more tuners on one edge of the outline say where it is to be straight.</source>
        <translation>Zwei oder mehr Mechaniken auf einer Kante des Umrisses sagen, wo sie gerade werden soll.</translation>
    </message>
    <message>
        <source>Two pins bring the template back to the same place.</source>
        <translation>Zwei Stifte bringen die Schablone an denselben Platz zurück.</translation>
    </message>
    <message>
        <source>Two plates cannot lie in one place, and want a little air between them.</source>
        <translation>Zwei Platten können nicht am selben Ort liegen und brauchen etwas Luft dazwischen.</translation>
    </message>
    <message>
        <source>Two points a known distance apart</source>
        <translation>Zwei Punkte mit bekanntem Abstand</translation>
    </message>
    <message>
        <source>Two slots share wood.</source>
        <translation>Zwei Schlitze teilen sich Holz.</translation>
    </message>
    <message>
        <source>Type a length here.</source>
        <translation>Hier eine Länge eingeben.</translation>
    </message>
    <message>
        <source>Type a length, for example 12.5, 12 mm or 1/2".</source>
        <translation>Eine Länge eingeben, zum Beispiel 12,5 oder 12 mm oder 1/2".</translation>
    </message>
    <message>
        <source>Type a place as two lengths with a semicolon between them, for example 12.5; 40.</source>
        <translation>Einen Ort als zwei Längen mit Strichpunkt dazwischen eingeben, zum Beispiel 12,5; 40.</translation>
    </message>
    <message>
        <source>Type a place such as 12.5; 40, a length or an angle; Enter takes it, Enter alone closes the line</source>
        <translation>Einen Ort wie 12,5; 40, eine Länge oder einen Winkel eingeben; Eingabe übernimmt, Eingabe allein schließt die Linie</translation>
    </message>
    <message>
        <source>Type a place, a length, an angle, or a length and an angle here.</source>
        <translation>Hier einen Ort, eine Länge, einen Winkel oder Länge und Winkel eingeben.</translation>
    </message>
    <message>
        <source>Type a place, the length over both ends, an angle, or a length and an angle here.</source>
        <translation>Hier einen Ort, die Länge über beide Enden, einen Winkel oder Länge und Winkel eingeben.</translation>
    </message>
    <message>
        <source>Type how far along the edge the tuner sits, for example 73.9.</source>
        <translation>Eingeben, wie weit entlang der Kante die Mechanik sitzt, zum Beispiel 73,9.</translation>
    </message>
    <message>
        <source>Type how far along the edge {id} sits, for example 73.9.</source>
        <translation>Eingeben, wie weit entlang der Kante {id} sitzt, zum Beispiel 73,9.</translation>
    </message>
    <message>
        <source>Type how far the copy lies from the line, above or below zero.</source>
        <translation>Eingeben, wie weit die Kopie von der Linie liegt, über oder unter null.</translation>
    </message>
    <message>
        <source>Type how far the picture is moved, across and along, or the angle by which it is turned.</source>
        <translation>Eingeben, wie weit das Bild quer und längs versetzt wird, oder den Winkel, um den es gedreht wird.</translation>
    </message>
    <message>
        <source>Type into the empty row to add a note. Ctrl+Shift+N on any stage pins one to what is held.</source>
        <translation>In die leere Zeile schreiben fügt eine Notiz hinzu. Strg+Umschalt+N heftet in jedem Bereich eine an das Gehaltene.</translation>
    </message>
    <message>
        <source>Type into the empty row to add a part. 12.50 and 12,50 are the same.</source>
        <translation>In die leere Zeile schreiben fügt ein Teil hinzu. 12,50 und 12.50 sind dasselbe.</translation>
    </message>
    <message>
        <source>Type its thickness again, with its unit behind it.</source>
        <translation>Seine Dicke noch einmal eingeben, mit der Einheit dahinter.</translation>
    </message>
    <message>
        <source>Type minutes, for example 4 or 1.5 h.</source>
        <translation>Minuten eingeben, zum Beispiel 4 oder 1,5 h.</translation>
    </message>
    <message>
        <source>Type minutes, or 1:30, 1.5 h, 90 s: a step of the piece on the bench is ticked off with it. Enter goes down, Tab goes on, Delete strikes out minutes, and the tick of a step; Space in the last column starts or stops the timer.</source>
        <translation>Minuten eingeben, oder 1:30, 1,5 h, 90 s: ein Schritt des Stücks auf der Werkbank ist damit abgehakt. Eingabe geht abwärts, Tab weiter, Entf streicht Minuten und das Häkchen eines Schritts; Leertaste in der letzten Spalte startet oder stoppt die Uhr.</translation>
    </message>
    <message>
        <source>Type the length of the edge, or the radius of an arc.</source>
        <translation>Die Länge der Kante oder den Radius eines Bogens eingeben.</translation>
    </message>
    <message>
        <source>Type the length of the slot over its ends, or its width, or the place of the end.</source>
        <translation>Die Länge des Schlitzes über seine Enden, seine Breite oder den Ort des Endes eingeben.</translation>
    </message>
    <message>
        <source>Type the width by itself, then the place, the length or the angle.</source>
        <translation>Die Breite für sich allein eingeben, danach Ort, Länge oder Winkel.</translation>
    </message>
    <message>
        <source>Type what the card at the pointer asks for; Tab leads to the next value, Enter or letting go takes them</source>
        <translation>Eingeben, wonach die Karte am Zeiger fragt; Tab führt zum nächsten Wert, Eingabe oder Loslassen übernimmt sie</translation>
    </message>
    <message>
        <source>Type {wood} mm as the width of the nut (Strings stage), or draw the outline {nut} mm wide at the nut line.</source>
        <translation>Als Breite des Sattels {wood} mm eingeben (Bereich Saiten), oder den Umriss an der Sattellinie {nut} mm breit zeichnen.</translation>
    </message>
    <message>
        <source>Typed: {told} – Enter takes it</source>
        <translation>Eingegeben: {told} – Eingabe übernimmt</translation>
    </message>
    <message>
        <source>Ukulele, baritone</source>
        <translation>Ukulele, Bariton</translation>
    </message>
    <message>
        <source>Ukulele, concert</source>
        <translation>Ukulele, Konzert</translation>
    </message>
    <message>
        <source>Ukulele, soprano</source>
        <translation>Ukulele, Sopran</translation>
    </message>
    <message>
        <source>Ukulele, tenor</source>
        <translation>Ukulele, Tenor</translation>
    </message>
    <message>
        <source>Under its margin of {needed}: {chance}.</source>
        <translation>Unter dem Mindestabstand von {needed}: {chance}.</translation>
    </message>
    <message>
        <source>Undo the last change of your own rack.</source>
        <translation>Die letzte Änderung Ihres eigenen Bestands zurücknehmen.</translation>
    </message>
    <message>
        <source>Undone: {name}</source>
        <translation>Rückgängig: {name}</translation>
    </message>
    <message>
        <source>Unknown field `{name}`</source>
        <translation>Unbekanntes Feld `{name}`</translation>
    </message>
    <message>
        <source>Unknown word `{name}`</source>
        <translation>Unbekanntes Wort `{name}`</translation>
    </message>
    <message>
        <source>Unlock the picture</source>
        <translation>Das Bild entsperren</translation>
    </message>
    <message>
        <source>Unnamed layout</source>
        <translation>Entwurf ohne Namen</translation>
    </message>
    <message>
        <source>Unplug the router before a bit is changed, tighten the collet, keep both hands on the router, wear eye and ear protection, collect the dust. The manual of the machine, the rules where you work and qualified instruction come first.</source>
        <translation>Vor dem Fräserwechsel den Stecker ziehen, die Spannzange festziehen, beide Hände an der Oberfräse, Augen- und Gehörschutz tragen, den Staub absaugen. Die Anleitung der Maschine, die Vorschriften an Ihrem Ort und fachkundige Unterweisung gehen vor.</translation>
    </message>
    <message>
        <source>Unsafe by now</source>
        <translation>Inzwischen unsicher</translation>
    </message>
    <message>
        <source>Unsafe here</source>
        <translation>Hier unsicher</translation>
    </message>
    <message>
        <source>Unsafe in this order</source>
        <translation>In dieser Folge unsicher</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Ungespeicherte Arbeit</translation>
    </message>
    <message>
        <source>Unsaved work cannot be kept safe: {trouble}</source>
        <translation>Ungespeicherte Arbeit kann nicht aufbewahrt werden: {trouble}</translation>
    </message>
    <message>
        <source>Unsaved work could not be read</source>
        <translation>Ungespeicherte Arbeit war nicht zu lesen</translation>
    </message>
    <message>
        <source>Unsaved work is not kept safe</source>
        <translation>Ungespeicherte Arbeit wird nicht aufbewahrt</translation>
    </message>
    <message>
        <source>Unsaved work was found</source>
        <translation>Ungespeicherte Arbeit gefunden</translation>
    </message>
    <message>
        <source>Unwise here</source>
        <translation>Hier unklug</translation>
    </message>
    <message>
        <source>Unwise in this order</source>
        <translation>In dieser Folge unklug</translation>
    </message>
    <message>
        <source>Upright bar</source>
        <translation>Stehender Balken</translation>
    </message>
    <message>
        <source>Use a drill with a shorter point, or move {item} farther away.</source>
        <translation>Einen Bohrer mit kürzerer Spitze nehmen oder {item} weiter weg setzen.</translation>
    </message>
    <message>
        <source>Use a slimmer pin or a larger blank.</source>
        <translation>Einen dünneren Stift oder einen größeren Rohling nehmen.</translation>
    </message>
    <message>
        <source>Usual cautions at the drill press and the router.</source>
        <translation>Übliche Vorsicht an Bohrmaschine und Oberfräse.</translation>
    </message>
    <message>
        <source>Veneer</source>
        <translation>Furnier</translation>
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
        <translation>Wand</translation>
    </message>
    <message>
        <source>Wanted chance</source>
        <translation>Gewünschte Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Wanted: it</source>
        <translation>Ich will, dass sie</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Abfall</translation>
    </message>
    <message>
        <source>Waste holes</source>
        <translation>Räumbohrungen</translation>
    </message>
    <message>
        <source>Waste holes {slot}</source>
        <translation>Räumbohrungen {slot}</translation>
    </message>
    <message>
        <source>Web</source>
        <translation>Steg</translation>
    </message>
    <message>
        <source>Web is thin</source>
        <translation>Steg ist dünn</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What a caliper says of the finished piece, held against the plan: how far each hole is off, whether the hardware still fits, and how true the shop works.</source>
        <translation>Was der Messschieber am fertigen Stück sagt, gegen den Plan gehalten: wie weit jede Bohrung abweicht, ob die Mechaniken noch passen und wie genau die Werkstatt arbeitet.</translation>
    </message>
    <message>
        <source>What do you look for?</source>
        <translation>Wonach suchen Sie?</translation>
    </message>
    <message>
        <source>What follows the template, and what fits.</source>
        <translation>Was der Schablone folgt, und was passt.</translation>
    </message>
    <message>
        <source>What follows the template: a bearing, or without one the bare shank or a guide bush.</source>
        <translation>Was der Schablone folgt: ein Anlaufring oder ohne ihn der blanke Schaft oder eine Kopierhülse.</translation>
    </message>
    <message>
        <source>What has to be done before what</source>
        <translation>Was vor was getan sein muss</translation>
    </message>
    <message>
        <source>What is done came too early for one step: no other place in the order mends that.</source>
        <translation>Was erledigt ist, kam für einen Schritt zu früh: Kein anderer Platz in der Folge hilft ihm.</translation>
    </message>
    <message>
        <source>What is done came too early for {n} steps: no other place in the order mends that.</source>
        <translation>Was erledigt ist, kam für {n} Schritte zu früh: Kein anderer Platz in der Folge hilft ihnen.</translation>
    </message>
    <message>
        <source>What is held, or the stage</source>
        <translation>Was gehalten wird, oder der Bereich</translation>
    </message>
    <message>
        <source>What is in hand is not set down yet: set it down, or put it back with Esc, and change its numbers then.</source>
        <translation>Was in der Hand ist, ist noch nicht abgesetzt: Setzen Sie es ab oder legen Sie es mit Esc zurück, und ändern Sie dann seine Zahlen.</translation>
    </message>
    <message>
        <source>What is measured</source>
        <translation>Was gemessen wird</translation>
    </message>
    <message>
        <source>What is placed by a row keeps its spacing; freed, each can be set out by itself.</source>
        <translation>Was eine Reihe setzt, behält deren Abstand; gelöst lässt sich jedes für sich ausrichten.</translation>
    </message>
    <message>
        <source>What is pressed or screwed in would sit looser: try the part in scrap first, or enter a drill of that size in the rack.</source>
        <translation>Was hineingepresst oder geschraubt wird, säße lockerer: das Teil zuerst in einem Reststück probieren oder einen Bohrer dieser Größe im Bestand eintragen.</translation>
    </message>
    <message>
        <source>What is pricked through the papers, or made of the template, by the job book, is where the drawing had it then.</source>
        <translation>Was laut Werkbuch durch die Bögen angekörnt oder an der Schablone gemacht ist, liegt dort, wo die Zeichnung es damals hatte.</translation>
    </message>
    <message>
        <source>What is printed: template, wrap paper, drilling and router cards, lists.</source>
        <translation>Was gedruckt wird: Schablone, Hüllbogen, Bohr- und Fräskarten, Listen.</translation>
    </message>
    <message>
        <source>What is sanded off round the hole changes how far the peg goes in.</source>
        <translation>Was um das Loch abgeschliffen wird, ändert, wie weit der Wirbel hineingeht.</translation>
    </message>
    <message>
        <source>What is wanted</source>
        <translation>Was gewünscht ist</translation>
    </message>
    <message>
        <source>What lies behind the nut line is left out.</source>
        <translation>Was hinter der Sattellinie liegt, wird ausgelassen.</translation>
    </message>
    <message>
        <source>What must I &amp;hold?…</source>
        <translation>Was muss ich ein&amp;halten?…</translation>
    </message>
    <message>
        <source>What must I hold?</source>
        <translation>Was muss ich einhalten?</translation>
    </message>
    <message>
        <source>What must be held</source>
        <translation>Was einzuhalten ist</translation>
    </message>
    <message>
        <source>What one such step takes you, in minutes; 1:30, s and h behind the number are understood.</source>
        <translation>Was ein solcher Schritt bei Ihnen dauert, in Minuten; 1:30, s und h hinter der Zahl werden verstanden.</translation>
    </message>
    <message>
        <source>What stands on the centreline stays there while both sides are edited alike: switch Mirrored off to move it aside.</source>
        <translation>Was auf der Mittellinie steht, bleibt dort, solange beide Seiten gleich bearbeitet werden: „Gespiegelt“ ausschalten, um es zur Seite zu rücken.</translation>
    </message>
    <message>
        <source>What the bore is for: it decides which margins it keeps and when it is drilled.</source>
        <translation>Wofür die Bohrung ist: das bestimmt ihre Mindestabstände und wann sie gebohrt wird.</translation>
    </message>
    <message>
        <source>What the layout is called, on its sheets and in its file's name.</source>
        <translation>Wie der Entwurf heißt, auf den Blättern und im Dateinamen.</translation>
    </message>
    <message>
        <source>What the loop {size} becomes</source>
        <translation>Was der Linienzug {size} wird</translation>
    </message>
    <message>
        <source>What the piece looks like after each stretch of steps.</source>
        <translation>Wie das Stück nach jedem Abschnitt aussieht.</translation>
    </message>
    <message>
        <source>What the readings say</source>
        <translation>Was die Messungen sagen</translation>
    </message>
    <message>
        <source>What the shop has: every plan is made with it.</source>
        <translation>Was die Werkstatt hat: jeder Plan wird damit gemacht.</translation>
    </message>
    <message>
        <source>What was asked for could not be written: {why}.</source>
        <translation>Das Verlangte ließ sich nicht schreiben: {why}.</translation>
    </message>
    <message>
        <source>What was in hand is put back.</source>
        <translation>Was in der Hand war, ist zurückgelegt.</translation>
    </message>
    <message>
        <source>What was in hand is put back: the layout changed meanwhile.</source>
        <translation>Was in der Hand war, ist zurückgelegt: der Entwurf wurde inzwischen geändert.</translation>
    </message>
    <message>
        <source>What was not saved is in no other file, and nothing brings it back.</source>
        <translation>Was nicht gespeichert war, steht in keiner anderen Datei, und nichts holt es zurück.</translation>
    </message>
    <message>
        <source>What was paid for has a name of at most {most} letters: this one has {n}.</source>
        <translation>Die Bezeichnung hat höchstens {most} Zeichen, diese hat {n}.</translation>
    </message>
    <message>
        <source>What was written down</source>
        <translation>Das Aufgeschriebene</translation>
    </message>
    <message>
        <source>What would do it</source>
        <translation>Was ginge</translation>
    </message>
    <message>
        <source>What you call it; plans and cards use this name.</source>
        <translation>Wie Sie es nennen; Pläne und Karten verwenden diesen Namen.</translation>
    </message>
    <message>
        <source>Whatever rubs on the template: a bearing on the bit, its bare shank, or a guide bush on the router.</source>
        <translation>Was an der Schablone anliegt: ein Anlaufring am Fräser, sein blanker Schaft oder eine Kopierhülse an der Oberfräse.</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Mausrad</translation>
    </message>
    <message>
        <source>Wheel zooms, the middle button or Space moves the view. A mark that is let go of near a corner goes onto it, with Alt it stays. Page up and down take the next mark, arrow keys move it (Shift farther, Alt finer).</source>
        <translation>Mausrad vergrößert, mittlere Taste oder Leertaste verschiebt die Ansicht. Eine nahe an einer Ecke losgelassene Marke springt darauf, mit Alt bleibt sie. Bild auf und ab nehmen die nächste Marke, Pfeiltasten versetzen sie (Umschalt weiter, Alt feiner).</translation>
    </message>
    <message>
        <source>Wheel zooms, the middle button or Space moves the view. Arrow keys move a pen (Shift farther, Alt finer), Enter presses where it stands.</source>
        <translation>Mausrad vergrößert, mittlere Taste oder Leertaste verschiebt die Ansicht. Pfeiltasten bewegen einen Stift (Umschalt weiter, Alt feiner), Eingabe klickt, wo er steht.</translation>
    </message>
    <message>
        <source>When it is done</source>
        <translation>Wenn es getan ist</translation>
    </message>
    <message>
        <source>When the old holes were plugged (job book), {names} was not plugged where it is drawn now.</source>
        <translation>Als die alten Löcher verschlossen wurden (Werkbuch), wurde {names} nicht dort verschlossen, wo es jetzt gezeichnet ist.</translation>
    </message>
    <message>
        <source>When the old holes were plugged (job book), {names} were not plugged where they are drawn now.</source>
        <translation>Als die alten Löcher verschlossen wurden (Werkbuch), wurden {names} nicht dort verschlossen, wo sie jetzt gezeichnet sind.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Where a scarf joint comes out on the face or the back its wood runs out to nothing, and chips under a drill or a bit.</source>
        <translation>Wo eine Schäftung auf der Vorderseite oder der Rückseite austritt, läuft ihr Holz auf nichts aus und splittert unter Bohrer oder Fräser.</translation>
    </message>
    <message>
        <source>Where a scarf joint comes out on the face or the back: the wood beside the glue line runs out to nothing there, and chips. A veneer over it holds it down.</source>
        <translation>Wo eine Schäftung auf der Vorderseite oder der Rückseite austritt: das Holz neben der Leimfuge läuft dort auf nichts aus und splittert. Ein Furnier darüber hält es nieder.</translation>
    </message>
    <message>
        <source>Where a side bore's axis meets the square edge of the blank. It is not straight across from the seat: the axis runs aslant to it.</source>
        <translation>Wo die Achse einer Seitenbohrung die gerade Kante des Rohlings trifft. Nicht einfach vom Sitz hinüber: die Achse läuft schräg.</translation>
    </message>
    <message>
        <source>Where a string leaves the nut, above the face; it decides the break angle.</source>
        <translation>Wo eine Saite den Sattel verlässt, über der Vorderseite; das bestimmt den Knickwinkel.</translation>
    </message>
    <message>
        <source>Where a tuner's plate or body lands. A flat plate on a curved edge stands off or rocks.</source>
        <translation>Wo Platte oder Gehäuse einer Mechanik aufliegt. Eine ebene Platte auf gebogener Kante liegt hohl oder kippelt.</translation>
    </message>
    <message>
        <source>Where each slot is narrowest.</source>
        <translation>Wo jeder Schlitz am schmalsten ist.</translation>
    </message>
    <message>
        <source>Where each string crosses the nut, at full size to lay on it, and as a table.</source>
        <translation>Wo jede Saite den Sattel kreuzt, in voller Größe zum Auflegen, und als Tabelle.</translation>
    </message>
    <message>
        <source>Where face and side take turns these tuners through the face would reach into the slot beside them: choose smaller ones, or those that fit.</source>
        <translation>Wo Vorderseite und Kante sich abwechseln, ragten diese Mechaniken in den Schlitz daneben: kleinere wählen oder die, die passen.</translation>
    </message>
    <message>
        <source>Where its string comes off</source>
        <translation>Wo ihre Saite abgeht</translation>
    </message>
    <message>
        <source>Where string {string} runs</source>
        <translation>Wo Saite {string} läuft</translation>
    </message>
    <message>
        <source>Where the bore ends in wood, the post cannot go on.</source>
        <translation>Wo die Bohrung im Holz endet, kann die Welle nicht weiter.</translation>
    </message>
    <message>
        <source>Where the glued piece begins, from the nut line.</source>
        <translation>Wo das angeleimte Stück beginnt, von der Sattellinie.</translation>
    </message>
    <message>
        <source>Where the glued piece ends, from the nut line.</source>
        <translation>Wo das angeleimte Stück endet, von der Sattellinie.</translation>
    </message>
    <message>
        <source>Where the outline runs against the grain, {side} up, is not known: {error}</source>
        <translation>Wo der Umriss gegen die Faser läuft, {side} oben, ist nicht bekannt: {error}</translation>
    </message>
    <message>
        <source>Where the post ends. Through the side measured from the plate; through the face from what you choose below.</source>
        <translation>Wo die Welle endet. Durch die Seite ab der Platte gemessen; durch die Vorderseite ab dem, was Sie unten wählen.</translation>
    </message>
    <message>
        <source>Where the post that is chosen has a string already, the two strings change posts.</source>
        <translation>Hat die gewählte Welle schon eine Saite, tauschen die beiden Saiten ihre Wellen.</translation>
    </message>
    <message>
        <source>Where the string of {tuner} runs</source>
        <translation>Wo die Saite von {tuner} läuft</translation>
    </message>
    <message>
        <source>Where the string winds.</source>
        <translation>Wo die Saite wickelt.</translation>
    </message>
    <message>
        <source>Where the waste is drilled out first.</source>
        <translation>Wo der Abfall ausgebohrt wird.</translation>
    </message>
    <message>
        <source>Where this hardware comes as left and right, tuners on the edge opposite the first take its mirror image.</source>
        <translation>Gibt es diese Mechanik links und rechts, nehmen die an der Kante gegenüber der ersten das Spiegelbild.</translation>
    </message>
    <message>
        <source>Whether another order does with fewer changes: {states} states of the work looked at</source>
        <translation>Ob eine andere Folge mit weniger Wechseln auskommt: {states} Stände der Arbeit angesehen</translation>
    </message>
    <message>
        <source>Which accuracy is needed where, and what moving a tuner would gain.</source>
        <translation>Welche Genauigkeit wo nötig ist, und was das Versetzen einer Mechanik brächte.</translation>
    </message>
    <message>
        <source>Which accuracy is needed where, and what to move.</source>
        <translation>Welche Genauigkeit wo nötig ist und was zu versetzen wäre.</translation>
    </message>
    <message>
        <source>Which rack</source>
        <translation>Welcher Bestand</translation>
    </message>
    <message>
        <source>Which side of the post the string comes to.</source>
        <translation>An welche Seite der Welle die Saite kommt.</translation>
    </message>
    <message>
        <source>Which version this is.</source>
        <translation>Welche Version dies ist.</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Ganze Seite</translation>
    </message>
    <message>
        <source>Why not the other bits ({rejected})</source>
        <translation>Warum nicht die anderen Fräser ({rejected})</translation>
    </message>
    <message>
        <source>Wide post in a bushing, as for a bass, large open gear on the back, four screws.</source>
        <translation>Dicke Welle in einer Buchse, wie für einen Bass, große offene Mechanik auf der Rückseite, vier Schrauben.</translation>
    </message>
    <message>
        <source>Wide post in a bushing, large open gear on the back, four screws.</source>
        <translation>Dicke Welle in einer Buchse, große offene Mechanik auf der Rückseite, vier Schrauben.</translation>
    </message>
    <message>
        <source>Widen the blank, or glue on an ear.</source>
        <translation>Den Rohling breiter nehmen oder ein Ohr anleimen.</translation>
    </message>
    <message>
        <source>Widen the outline there, or fill {opening} with wood first.</source>
        <translation>Den Umriss dort erweitern oder {opening} zuerst mit Holz füllen.</translation>
    </message>
    <message>
        <source>Widest bit of the rack that passes</source>
        <translation>Breitester passender Fräser im Bestand</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Width of the new slot</source>
        <translation>Breite des neuen Schlitzes</translation>
    </message>
    <message>
        <source>Width of the nut</source>
        <translation>Breite des Sattels</translation>
    </message>
    <message>
        <source>Width of the plate.</source>
        <translation>Breite der Platte.</translation>
    </message>
    <message>
        <source>Width of the retainer</source>
        <translation>Breite des Niederhalters</translation>
    </message>
    <message>
        <source>Windows knows a file by what follows the last dot of its name, so layouts (.headstock.json) cannot be given to Pegwright alone: make a shortcut to the program, and drop layouts on it or on its window.</source>
        <translation>Windows erkennt eine Datei an dem, was nach dem letzten Punkt ihres Namens steht, darum können Entwürfe (.headstock.json) nicht allein Pegwright zugeordnet werden: legen Sie eine Verknüpfung zum Programm an und lassen Sie Entwürfe darauf oder auf sein Fenster fallen.</translation>
    </message>
    <message>
        <source>With a bearing on its tip it cannot be lowered into solid wood, and no drill of the rack opens the waste: add a brad point or Forstner bit at least 2 mm slimmer than the slot.</source>
        <translation>Mit Anlaufring an der Spitze lässt er sich nicht ins volle Holz senken, und kein Bohrer im Bestand öffnet den Abfall: einen Zentrierspitz- oder Forstnerbohrer eintragen, mindestens 2 mm schlanker als der Schlitz.</translation>
    </message>
    <message>
        <source>With a bearing on its tip it has to be let into the drilled waste, and {widest} does not go into a hole of {entry}.</source>
        <translation>Mit Anlaufring an der Spitze muss er in den ausgebohrten Abfall eingelassen werden, und {widest} passen nicht in eine Bohrung von {entry}.</translation>
    </message>
    <message>
        <source>With its bushing and washer tight; a thinner head is a snag.</source>
        <translation>Mit festgezogener Buchse und Scheibe; eine dünnere Kopfplatte ist ein Haken.</translation>
    </message>
    <message>
        <source>With the bearing on its tip it has to cut the whole {thickness} at once, and its cutting edges are {step}.</source>
        <translation>Mit dem Anlaufring an der Spitze muss er die ganzen {thickness} auf einmal schneiden, und seine Schneiden sind {step} lang.</translation>
    </message>
    <message>
        <source>With the bearing on its tip it has to cut the whole {thickness} at once, and the deepest pass that suits it is {step}.</source>
        <translation>Mit dem Anlaufring an der Spitze muss er die ganzen {thickness} auf einmal schneiden, und der tiefste Durchgang für ihn ist {step}.</translation>
    </message>
    <message>
        <source>With the file's own unit, {unit}, the drawing is {sized}: no headstock is that size.</source>
        <translation>In der Einheit der Datei, {unit}, misst die Zeichnung {sized}: so groß ist keine Kopfplatte.</translation>
    </message>
    <message>
        <source>With the post of {tuner} in its bore you can see whether its screws fall on the marks before you drill them.</source>
        <translation>Mit der Welle von {tuner} in der Bohrung sieht man vor dem Bohren, ob die Schrauben auf die Anrisse fallen.</translation>
    </message>
    <message>
        <source>With the template clamped on centreline and {line}, drill {of} through template and blank, {diameter} wide, on a spoil board; {start}{also}.</source>
        <translation>Die Schablone auf Mittellinie und {line} festgespannt: {of} durch Schablone und Rohling bohren, {diameter} weit, auf einem Opferbrett; {start}{also}.</translation>
    </message>
    <message>
        <source>With the waste gone nothing backs the wood between bore and edge, and it can split off.</source>
        <translation>Ist der Abfall fort, stützt nichts das Holz zwischen Bohrung und Kante, es kann abplatzen.</translation>
    </message>
    <message>
        <source>With the waste gone the rails spring, and base and clamps have little to stand on.</source>
        <translation>Ist der Abfall fort, federn die Wangen, und Fußplatte und Zwingen haben wenig Auflage.</translation>
    </message>
    <message>
        <source>With {mm:.1e} mm to one unit the drawing is too large to be worked out: set its unit to the one it was drawn in. In an SVG the size of the page and its viewBox tell it.</source>
        <translation>Mit {mm:.1e} mm je Einheit ist die Zeichnung zu groß, um ausgerechnet zu werden: Stellen Sie die Einheit ein, in der sie gezeichnet wurde. In einer SVG sagen es die Größe der Seite und ihre viewBox.</translation>
    </message>
    <message>
        <source>Without a bit the template has no size.</source>
        <translation>Ohne Fräser hat die Schablone kein Maß.</translation>
    </message>
    <message>
        <source>Without a bush</source>
        <translation>Ohne Kopierhülse</translation>
    </message>
    <message>
        <source>Without a name</source>
        <translation>Ohne Namen</translation>
    </message>
    <message>
        <source>Without pins nothing brings the template back to the same place from the other side: add two.</source>
        <translation>Ohne Stifte bringt nichts die Schablone von der anderen Seite an denselben Platz zurück: zwei setzen.</translation>
    </message>
    <message>
        <source>Without pins the template is laid on the marks.</source>
        <translation>Ohne Stifte wird die Schablone auf die Anrisse gelegt.</translation>
    </message>
    <message>
        <source>Without {feature} nothing holds the template in its place.</source>
        <translation>Ohne {feature} hält nichts die Schablone an ihrem Platz.</translation>
    </message>
    <message>
        <source>Wood above and below a side bore</source>
        <translation>Holz über und unter Seitenbohrung</translation>
    </message>
    <message>
        <source>Wood behind the nut line that the drawing shows: pins and clamps may stand there.</source>
        <translation>Holz hinter der Sattellinie, das die Zeichnung zeigt: dort dürfen Stifte und Zwingen stehen.</translation>
    </message>
    <message>
        <source>Wood behind the {line}</source>
        <translation>Holz hinter der {line}</translation>
    </message>
    <message>
        <source>Wood below its floor</source>
        <translation>Holz unter ihrem Grund</translation>
    </message>
    <message>
        <source>Wood between a bore from the side and the face or the back.</source>
        <translation>Holz zwischen einer seitlichen Bohrung und Vorder- oder Rückseite.</translation>
    </message>
    <message>
        <source>Wood from the nut line to the far end of the blank.</source>
        <translation>Holz von der Sattellinie bis zum Ende des Rohlings.</translation>
    </message>
    <message>
        <source>Wood left</source>
        <translation>Holzreste</translation>
    </message>
    <message>
        <source>Wood left standing under a plate keeps it from sitting.</source>
        <translation>Stehengebliebenes Holz unter einer Platte lässt sie nicht aufliegen.</translation>
    </message>
    <message>
        <source>Wood of the neck over it</source>
        <translation>Holz des Halses darüber</translation>
    </message>
    <message>
        <source>Wood that goes: outside the outline, or inside a slot.</source>
        <translation>Holz, das fortkommt: außerhalb des Umrisses oder im Schlitz.</translation>
    </message>
    <message>
        <source>Wood that the cutter cannot reach, hatched, with its depth: to be pared by hand.</source>
        <translation>Holz, das der Fräser nicht erreicht, schraffiert, mit seiner Tiefe: von Hand nachzustechen.</translation>
    </message>
    <message>
        <source>Wood, hardware by its dimensions, drills and bits, what the rack lacks.</source>
        <translation>Holz, Mechaniken nach Maßen, Bohrer und Fräser, was im Bestand fehlt.</translation>
    </message>
    <message>
        <source>Wooden peg that only its taper holds: drilled narrower and reamed from the back, until the peg sits. The button lies behind the post.</source>
        <translation>Holzwirbel, den nur seine Verjüngung hält: enger gebohrt und von der Rückseite aufgerieben, bis der Wirbel sitzt. Der Flügel liegt hinter der Welle.</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Work an edge by hand, 100 mm</source>
        <translation>Kante von Hand, 100 mm</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Berechnen</translation>
    </message>
    <message>
        <source>Working out the order…</source>
        <translation>Die Arbeitsfolge wird berechnet…</translation>
    </message>
    <message>
        <source>Working out the plan…</source>
        <translation>Der Plan wird berechnet…</translation>
    </message>
    <message>
        <source>Wound in bronze over a steel core; densities from memory of handbooks.</source>
        <translation>Bronze über Stahlkern gesponnen; Dichten aus dem Gedächtnis nach Handbüchern.</translation>
    </message>
    <message>
        <source>Wound the other way round, so that strings keep clear and straight: {tuners}.</source>
        <translation>Anders herum gewickelt, damit Saiten frei und gerade laufen: {tuners}.</translation>
    </message>
    <message>
        <source>Wrap paper</source>
        <translation>Hüllbogen</translation>
    </message>
    <message>
        <source>Write DXF, SVG, PDF and tables to a folder.</source>
        <translation>DXF, SVG, PDF und Tabellen in einen Ordner ausgeben.</translation>
    </message>
    <message>
        <source>Write hours, money, notes and readings as a table (CSV).</source>
        <translation>Stunden, Geld, Notizen und Messwerte als Tabelle (CSV) ausgeben.</translation>
    </message>
    <message>
        <source>Write that template too, for {names}.</source>
        <translation>Auch diese Schablone für {names} ausgeben.</translation>
    </message>
    <message>
        <source>Write the &amp;job book…</source>
        <translation>Das &amp;Werkbuch ausgeben…</translation>
    </message>
    <message>
        <source>Write the job book</source>
        <translation>Das Werkbuch ausgeben</translation>
    </message>
    <message>
        <source>Write the job book as a table…</source>
        <translation>Das Werkbuch als Tabelle ausgeben…</translation>
    </message>
    <message>
        <source>Write the sheets into this folder</source>
        <translation>Die Blätter in diesen Ordner ausgeben</translation>
    </message>
    <message>
        <source>Write the sheets…</source>
        <translation>Die Blätter ausgeben…</translation>
    </message>
    <message>
        <source>Write the template</source>
        <translation>Die Schablone ausgeben</translation>
    </message>
    <message>
        <source>Write this plan's template…</source>
        <translation>Schablone dieses Plans ausgeben…</translation>
    </message>
    <message>
        <source>Write this rack to a file.</source>
        <translation>Diesen Bestand in eine Datei ausgeben.</translation>
    </message>
    <message>
        <source>Write what to do differently at the step of the row.</source>
        <translation>Beim Schritt der Zeile aufschreiben, was anders zu machen ist.</translation>
    </message>
    <message>
        <source>Write what to do differently, pinned to what is held.</source>
        <translation>Aufschreiben, was anders zu machen ist, angeheftet an das Gehaltene.</translation>
    </message>
    <message>
        <source>Writing the plans down: {number} of {plans}</source>
        <translation>Pläne in Worte fassen: {number} von {plans}</translation>
    </message>
    <message>
        <source>Writing the sheets…</source>
        <translation>Die Blätter werden ausgegeben…</translation>
    </message>
    <message>
        <source>Writing {name}…</source>
        <translation>{name} wird geschrieben…</translation>
    </message>
    <message>
        <source>Written into the job book: {what}</source>
        <translation>Ins Werkbuch eingetragen: {what}</translation>
    </message>
    <message>
        <source>Written to {out}.</source>
        <translation>Geschrieben nach {out}.</translation>
    </message>
    <message>
        <source>Written too</source>
        <translation>Auch ausgegeben</translation>
    </message>
    <message>
        <source>Written: {path}</source>
        <translation>Ausgegeben: {path}</translation>
    </message>
    <message>
        <source>Written: {path}. Check the size on a print or with calipers before the wood.</source>
        <translation>Ausgegeben: {path}. Vor dem Holz die Größe an einem Ausdruck oder mit dem Messschieber prüfen.</translation>
    </message>
    <message>
        <source>Wrong</source>
        <translation>Falsch</translation>
    </message>
    <message>
        <source>Your bits, bushes, drills and machines, in place of the head.</source>
        <translation>Ihre Fräser, Hülsen, Bohrer und Maschinen, anstelle der Kopfplatte.</translation>
    </message>
    <message>
        <source>Your choice {names} does it on another template.</source>
        <translation>Ihre Wahl {names} schafft es mit einer anderen Schablone.</translation>
    </message>
    <message>
        <source>Your choice, {names}, no longer does it, so the best other plan is shown.{reason}</source>
        <translation>Ihre Wahl, {names}, schafft es nicht mehr; gezeigt wird der beste andere Plan.{reason}</translation>
    </message>
    <message>
        <source>Your choice: </source>
        <translation>Ihre Wahl: </translation>
    </message>
    <message>
        <source>Your layout is as it was after the last step, and it has been written down as {file}: it is offered at the next start if anything else goes wrong. Go on, and save it soon.</source>
        <translation>Ihr Entwurf ist wie nach dem letzten Schritt und wurde als {file} aufgeschrieben: geht noch etwas schief, wird er beim nächsten Start angeboten. Arbeiten Sie weiter und speichern Sie bald.</translation>
    </message>
    <message>
        <source>Your layout is as it was; it holds nothing that is not saved.</source>
        <translation>Ihr Entwurf ist, wie er war; nichts darin ist ungespeichert.</translation>
    </message>
    <message>
        <source>Your layout is safe: it is saved as {path}.</source>
        <translation>Ihr Entwurf ist sicher: er ist gespeichert als {path}.</translation>
    </message>
    <message>
        <source>Your layout is still in the window, but it could not be written down: save it now.</source>
        <translation>Ihr Entwurf ist noch im Fenster, ließ sich aber nicht aufschreiben: jetzt speichern.</translation>
    </message>
    <message>
        <source>Your own rack was changed in another window meanwhile. Here it is as it is now: make the change once more.</source>
        <translation>Ihr eigener Bestand wurde inzwischen in einem anderen Fenster geändert. Hier steht er, wie er jetzt ist: Nehmen Sie die Änderung noch einmal vor.</translation>
    </message>
    <message>
        <source>Your rack could not be read</source>
        <translation>Ihr Bestand war nicht lesbar</translation>
    </message>
    <message>
        <source>Your rack in {path} cannot be read: {why}.</source>
        <translation>Ihr Bestand in {path} ist nicht lesbar: {why}.</translation>
    </message>
    <message>
        <source>Your rack was not kept</source>
        <translation>Ihr Bestand wurde nicht aufbewahrt</translation>
    </message>
    <message>
        <source>Your work is still here in the window, as it was.</source>
        <translation>Ihre Arbeit ist noch hier im Fenster, wie sie war.</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>V&amp;ergrößern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Verk&amp;leinern</translation>
    </message>
    <message>
        <source>Zoom about the pointer</source>
        <translation>Um den Zeiger vergrößern</translation>
    </message>
    <message>
        <source>a back veneer of {veneer}</source>
        <translation>ein Rückenfurnier von {veneer}</translation>
    </message>
    <message>
        <source>a bit for {what}</source>
        <translation>ein Fräser für {what}</translation>
    </message>
    <message>
        <source>a cutter over {corner} leaves wood to pare</source>
        <translation>ein Fräser über {corner} lässt Holz zum Nachstechen</translation>
    </message>
    <message>
        <source>a face veneer of {veneer}</source>
        <translation>ein Deckfurnier von {veneer}</translation>
    </message>
    <message>
        <source>a fifth of full size</source>
        <translation>ein Fünftel der Größe</translation>
    </message>
    <message>
        <source>a file of that name is there</source>
        <translation>dort ist eine Datei dieses Namens</translation>
    </message>
    <message>
        <source>a flat along the edge</source>
        <translation>eine Fläche entlang der Kante</translation>
    </message>
    <message>
        <source>a flat {size} long</source>
        <translation>eine {size} lange Fläche</translation>
    </message>
    <message>
        <source>a folder of that name is there</source>
        <translation>dort ist ein Ordner dieses Namens</translation>
    </message>
    <message>
        <source>a round spot</source>
        <translation>eine runde Stelle</translation>
    </message>
    <message>
        <source>a round spot {size} wide</source>
        <translation>eine {size} breite runde Stelle</translation>
    </message>
    <message>
        <source>a way in for the blade</source>
        <translation>einen Weg für das Sägeblatt</translation>
    </message>
    <message>
        <source>a word behind amounts</source>
        <translation>ein Wort hinter Beträgen</translation>
    </message>
    <message>
        <source>about</source>
        <comment>column</comment>
        <translation>woran</translation>
    </message>
    <message>
        <source>about 1 in {n:,.0f}</source>
        <translation>etwa 1 von {n:,.0f}</translation>
    </message>
    <message>
        <source>about {chance}</source>
        <translation>etwa {chance}</translation>
    </message>
    <message>
        <source>about {n:.0f} in 100</source>
        <translation>etwa {n:.0f} von 100</translation>
    </message>
    <message>
        <source>accuracy</source>
        <comment>field of a record</comment>
        <translation>Werkstattgenauigkeit</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>across</source>
        <comment>term</comment>
        <translation>quer</translation>
    </message>
    <message>
        <source>across, {place}</source>
        <translation>quer, {place}</translation>
    </message>
    <message>
        <source>against the grain</source>
        <comment>term</comment>
        <translation>gegen die Faser</translation>
    </message>
    <message>
        <source>air between</source>
        <translation>Luft dazwischen</translation>
    </message>
    <message>
        <source>all keeps clear of it, nothing cuts it</source>
        <translation>alles hält Abstand, nichts schneidet daran</translation>
    </message>
    <message>
        <source>along</source>
        <comment>term</comment>
        <translation>längs</translation>
    </message>
    <message>
        <source>along the bore</source>
        <translation>entlang der Bohrung</translation>
    </message>
    <message>
        <source>along the centreline</source>
        <translation>entlang der Mittellinie</translation>
    </message>
    <message>
        <source>along the edge</source>
        <translation>entlang der Kante</translation>
    </message>
    <message>
        <source>along the slot</source>
        <translation>entlang des Schlitzes</translation>
    </message>
    <message>
        <source>along {along}, tilt {tilt}</source>
        <translation>längs {along}, Neigung {tilt}</translation>
    </message>
    <message>
        <source>along {along}, {place}</source>
        <translation>längs {along}, {place}</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>angle</source>
        <comment>term</comment>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>angle at which a drill skates</source>
        <comment>field of a record</comment>
        <translation>Rutschwinkel des Bohrers</translation>
    </message>
    <message>
        <source>another program holds it</source>
        <translation>ein anderes Programm hält sie fest</translation>
    </message>
    <message>
        <source>any</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>any flat waste; goes under every through bore</source>
        <translation>ebenes Abfallbrett; kommt unter jede durchgehende Bohrung</translation>
    </message>
    <message>
        <source>arc</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>as far apart as the wood allows</source>
        <translation>so weit auseinander, wie das Holz erlaubt</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>wie es war</translation>
    </message>
    <message>
        <source>as large as the blank</source>
        <translation>so groß wie der Rohling</translation>
    </message>
    <message>
        <source>as saved</source>
        <translation>wie gespeichert</translation>
    </message>
    <message>
        <source>as stated</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>as the drawing says</source>
        <translation>wie die Zeichnung sagt</translation>
    </message>
    <message>
        <source>as the slot</source>
        <translation>wie der Schlitz</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>wie eingegeben</translation>
    </message>
    <message>
        <source>as you said</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>aside</source>
        <translation>seitlich</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>in mindestens</translation>
    </message>
    <message>
        <source>at the hole</source>
        <translation>am Loch</translation>
    </message>
    <message>
        <source>at the nut</source>
        <translation>am Sattel</translation>
    </message>
    <message>
        <source>at the post of {tuner}</source>
        <translation>an der Welle von {tuner}</translation>
    </message>
    <message>
        <source>at x {x} mm, from y {y0} mm to {y1} mm</source>
        <translation>bei x {x} mm, von y {y0} mm bis {y1} mm</translation>
    </message>
    <message>
        <source>axis</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>axis of {id}</source>
        <translation>Achse von {id}</translation>
    </message>
    <message>
        <source>axis {fence} from the fence</source>
        <translation>Achse {fence} vom Anschlag</translation>
    </message>
    <message>
        <source>back</source>
        <comment>term</comment>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>back paper</source>
        <comment>term</comment>
        <translation>Rückbogen</translation>
    </message>
    <message>
        <source>back veneer</source>
        <translation>Rückenfurnier</translation>
    </message>
    <message>
        <source>back veneer</source>
        <comment>field of a record</comment>
        <translation>Rückenfurnier</translation>
    </message>
    <message>
        <source>back, tip up: the treble side is on the left</source>
        <translation>Rückseite, Spitze oben: die Diskantseite ist links</translation>
    </message>
    <message>
        <source>band saw</source>
        <comment>term</comment>
        <translation>Bandsäge</translation>
    </message>
    <message>
        <source>bare shank</source>
        <comment>term</comment>
        <translation>blanker Schaft</translation>
    </message>
    <message>
        <source>base</source>
        <translation>Fußplatte</translation>
    </message>
    <message>
        <source>base</source>
        <comment>field of a record</comment>
        <translation>Grundmaß</translation>
    </message>
    <message>
        <source>base line</source>
        <comment>term</comment>
        <translation>Grundlinie</translation>
    </message>
    <message>
        <source>bass</source>
        <translation>Bass</translation>
    </message>
    <message>
        <source>bass</source>
        <comment>field of a record</comment>
        <translation>Basskante</translation>
    </message>
    <message>
        <source>bass</source>
        <comment>name of a feature</comment>
        <translation>Bassseite</translation>
    </message>
    <message>
        <source>bass</source>
        <comment>term</comment>
        <translation>Bass</translation>
    </message>
    <message>
        <source>bass ear</source>
        <comment>name of a feature</comment>
        <translation>Bassohr</translation>
    </message>
    <message>
        <source>bass edge</source>
        <comment>term</comment>
        <translation>Basskante</translation>
    </message>
    <message>
        <source>bass edge of the blank</source>
        <translation>Basskante des Rohlings</translation>
    </message>
    <message>
        <source>bass edge up</source>
        <translation>Bass oben</translation>
    </message>
    <message>
        <source>bass end</source>
        <translation>Bassende</translation>
    </message>
    <message>
        <source>bass end of the nut</source>
        <translation>Bassende des Sattels</translation>
    </message>
    <message>
        <source>bass face</source>
        <comment>name of a feature</comment>
        <translation>Bassseite vorn</translation>
    </message>
    <message>
        <source>bass face row</source>
        <comment>name of a feature</comment>
        <translation>Bassreihe vorn</translation>
    </message>
    <message>
        <source>bass row</source>
        <comment>name of a feature</comment>
        <translation>Bassreihe</translation>
    </message>
    <message>
        <source>bass side</source>
        <translation>Bassseite</translation>
    </message>
    <message>
        <source>bass side</source>
        <comment>name of a feature</comment>
        <translation>Bassseite quer</translation>
    </message>
    <message>
        <source>bass side row</source>
        <comment>name of a feature</comment>
        <translation>Bassreihe quer</translation>
    </message>
    <message>
        <source>bass slot</source>
        <comment>name of a feature</comment>
        <translation>Bassschlitz</translation>
    </message>
    <message>
        <source>bearing</source>
        <translation>Anlaufring</translation>
    </message>
    <message>
        <source>bearing diameter</source>
        <comment>field of a record</comment>
        <translation>Durchmesser des Anlaufrings</translation>
    </message>
    <message>
        <source>bearing height</source>
        <comment>field of a record</comment>
        <translation>Höhe des Anlaufrings</translation>
    </message>
    <message>
        <source>bearing on the shank</source>
        <comment>term</comment>
        <translation>Anlaufring am Schaft</translation>
    </message>
    <message>
        <source>bearing on the tip</source>
        <comment>term</comment>
        <translation>Anlaufring an der Spitze</translation>
    </message>
    <message>
        <source>before the post</source>
        <comment>field of a record</comment>
        <translation>vor der Welle</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>angefangen</translation>
    </message>
    <message>
        <source>behind</source>
        <comment>term</comment>
        <translation>hinten</translation>
    </message>
    <message>
        <source>behind the {line}</source>
        <translation>hinter der {line}</translation>
    </message>
    <message>
        <source>below face</source>
        <translation>ab Vorderseite</translation>
    </message>
    <message>
        <source>below that its bearing of {height} leaves the template</source>
        <translation>tiefer verlässt sein Anlaufring von {height} die Schablone</translation>
    </message>
    <message>
        <source>bench</source>
        <comment>term</comment>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>beside that glue dries: {drying}</source>
        <translation>daneben trocknet Leim: {drying}</translation>
    </message>
    <message>
        <source>beside the pin {wide}</source>
        <translation>neben dem Stift {wide}</translation>
    </message>
    <message>
        <source>beside {id}</source>
        <translation>neben {id}</translation>
    </message>
    <message>
        <source>between two holes: far walls, inside jaws</source>
        <translation>zwischen zwei Bohrungen: ferne Wände, Innenschenkel</translation>
    </message>
    <message>
        <source>between two holes: over pins that fill them</source>
        <translation>zwischen zwei Bohrungen: über Stifte, die sie füllen</translation>
    </message>
    <message>
        <source>between two holes: the wood left, outside jaws</source>
        <translation>zwischen zwei Bohrungen: das Holz dazwischen, Außenschenkel</translation>
    </message>
    <message>
        <source>bit</source>
        <comment>column</comment>
        <translation>werkzeug</translation>
    </message>
    <message>
        <source>bit</source>
        <comment>field of a record</comment>
        <translation>Fräser</translation>
    </message>
    <message>
        <source>bits</source>
        <translation>Fräser</translation>
    </message>
    <message>
        <source>blank</source>
        <comment>term</comment>
        <translation>Rohling</translation>
    </message>
    <message>
        <source>blank, all edges square</source>
        <translation>Rohling, alle Kanten winklig</translation>
    </message>
    <message>
        <source>blank, already sawn to the outline</source>
        <translation>Rohling, schon nach dem Umriss gesägt</translation>
    </message>
    <message>
        <source>blocks {high} over {base}</source>
        <translation>Klötze {high} auf {base}</translation>
    </message>
    <message>
        <source>board between openings</source>
        <comment>field of a record</comment>
        <translation>Brett zwischen Öffnungen</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>bore</source>
        <comment>field of a record</comment>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>bore</source>
        <comment>term</comment>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>bore from the side</source>
        <translation>Bohrung von der Seite</translation>
    </message>
    <message>
        <source>bore to bore</source>
        <comment>field of a record</comment>
        <translation>Bohrung zu Bohrung</translation>
    </message>
    <message>
        <source>bore to outline</source>
        <comment>field of a record</comment>
        <translation>Bohrung zu Umriss</translation>
    </message>
    <message>
        <source>bore to slot wall</source>
        <comment>field of a record</comment>
        <translation>Bohrung zu Schlitzwand</translation>
    </message>
    <message>
        <source>bores from the side, at the square edge: y from the nut line</source>
        <translation>Seitenbohrungen, an der geraden Kante: y von der Sattellinie</translation>
    </message>
    <message>
        <source>bores from the side, from the square edge: depth</source>
        <translation>Seitenbohrungen, von der geraden Kante: Tiefe</translation>
    </message>
    <message>
        <source>bores from the side: below the face</source>
        <translation>Seitenbohrungen: unter der Vorderseite</translation>
    </message>
    <message>
        <source>bores from the side: tilt</source>
        <translation>Seitenbohrungen: Neigung</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beides</translation>
    </message>
    <message>
        <source>brad</source>
        <comment>term</comment>
        <translation>Zentrierspitz</translation>
    </message>
    <message>
        <source>brad point</source>
        <translation>Zentrierspitzbohrer</translation>
    </message>
    <message>
        <source>brad {size}</source>
        <comment>name of a feature</comment>
        <translation>Zentrierspitz {size}</translation>
    </message>
    <message>
        <source>brad {size} in</source>
        <comment>name of a feature</comment>
        <translation>Zentrierspitz {size} Zoll</translation>
    </message>
    <message>
        <source>break angle</source>
        <translation>Knickwinkel</translation>
    </message>
    <message>
        <source>bulge</source>
        <comment>field of a record</comment>
        <translation>Wölbung</translation>
    </message>
    <message>
        <source>bush</source>
        <translation>Kopierhülse</translation>
    </message>
    <message>
        <source>bush</source>
        <comment>field of a record</comment>
        <translation>Kopierhülse</translation>
    </message>
    <message>
        <source>bush {size}</source>
        <comment>name of a feature</comment>
        <translation>Hülse {size}</translation>
    </message>
    <message>
        <source>bush {size} in</source>
        <comment>name of a feature</comment>
        <translation>Hülse {size} Zoll</translation>
    </message>
    <message>
        <source>bushes</source>
        <translation>Kopierhülsen</translation>
    </message>
    <message>
        <source>button</source>
        <comment>field of a record</comment>
        <translation>Flügel</translation>
    </message>
    <message>
        <source>button reaches {reach}</source>
        <translation>Flügel reicht {reach}</translation>
    </message>
    <message>
        <source>button to button</source>
        <comment>field of a record</comment>
        <translation>Flügel zu Flügel</translation>
    </message>
    <message>
        <source>button {length} behind the post</source>
        <translation>Flügel {length} hinter der Welle</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>card</source>
        <comment>column</comment>
        <translation>karte</translation>
    </message>
    <message>
        <source>card {number}</source>
        <translation>Karte {number}</translation>
    </message>
    <message>
        <source>cautions</source>
        <comment>column</comment>
        <translation>vorsicht</translation>
    </message>
    <message>
        <source>centre of edge {i} of {name}</source>
        <translation>Mittelpunkt der Kante {i} von {name}</translation>
    </message>
    <message>
        <source>centreline</source>
        <comment>term</comment>
        <translation>Mittellinie</translation>
    </message>
    <message>
        <source>centreline, tip this way</source>
        <translation>Mittellinie, Spitze hierhin</translation>
    </message>
    <message>
        <source>centreline: closes the line</source>
        <translation>Mittellinie: schließt die Linie</translation>
    </message>
    <message>
        <source>choose one…</source>
        <translation>eines wählen …</translation>
    </message>
    <message>
        <source>clean up</source>
        <comment>term</comment>
        <translation>Säubern</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>clearance</source>
        <comment>term</comment>
        <translation>Freibohrung</translation>
    </message>
    <message>
        <source>clearance bore</source>
        <comment>term</comment>
        <translation>Freibohrung</translation>
    </message>
    <message>
        <source>clearance bores</source>
        <comment>term</comment>
        <translation>Freibohrungen</translation>
    </message>
    <message>
        <source>collets</source>
        <comment>field of a record</comment>
        <translation>Spannzangen</translation>
    </message>
    <message>
        <source>comes out sound</source>
        <translation>gelingt</translation>
    </message>
    <message>
        <source>coping saw</source>
        <comment>term</comment>
        <translation>Laubsäge</translation>
    </message>
    <message>
        <source>core</source>
        <comment>field of a record</comment>
        <translation>Stahlkern</translation>
    </message>
    <message>
        <source>corner</source>
        <translation>Ecke</translation>
    </message>
    <message>
        <source>corner {n}</source>
        <translation>Ecke {n}</translation>
    </message>
    <message>
        <source>corrected for this printer: across {across:.3f}, along {along:.3f}</source>
        <translation>für diesen Drucker korrigiert: quer {across:.3f}, längs {along:.3f}</translation>
    </message>
    <message>
        <source>count</source>
        <comment>column</comment>
        <translation>anzahl</translation>
    </message>
    <message>
        <source>counterbore</source>
        <translation>Senkung</translation>
    </message>
    <message>
        <source>counterbore</source>
        <comment>term</comment>
        <translation>Senkung</translation>
    </message>
    <message>
        <source>counterbores</source>
        <comment>term</comment>
        <translation>Senkungen</translation>
    </message>
    <message>
        <source>course</source>
        <translation>Chor</translation>
    </message>
    <message>
        <source>course</source>
        <comment>field of a record</comment>
        <translation>Chor</translation>
    </message>
    <message>
        <source>curve</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>Zuschnitt</translation>
    </message>
    <message>
        <source>cut in the template</source>
        <translation>Schablonenschnitt</translation>
    </message>
    <message>
        <source>cut otherwise than it is drawn</source>
        <translation>anders ausgearbeitet, als es gezeichnet ist</translation>
    </message>
    <message>
        <source>cut outline</source>
        <comment>term</comment>
        <translation>Umriss sägen</translation>
    </message>
    <message>
        <source>cut: a change here changes the plan alone</source>
        <translation>schon ausgearbeitet: Eine Änderung hier ändert nur den Plan</translation>
    </message>
    <message>
        <source>cutter</source>
        <translation>Fräser</translation>
    </message>
    <message>
        <source>cutter</source>
        <comment>field of a record</comment>
        <translation>Schneidendurchmesser</translation>
    </message>
    <message>
        <source>cutters over {corner} leave wood</source>
        <translation>Fräser über {corner} lassen Holz</translation>
    </message>
    <message>
        <source>cutting length</source>
        <comment>field of a record</comment>
        <translation>Schneidenlänge</translation>
    </message>
    <message>
        <source>deep</source>
        <translation>tief</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>depth</source>
        <comment>term</comment>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>depth stop</source>
        <comment>field of a record</comment>
        <translation>Tiefenanschlag</translation>
    </message>
    <message>
        <source>depth_mm</source>
        <comment>column</comment>
        <translation>tiefe_mm</translation>
    </message>
    <message>
        <source>description</source>
        <comment>field of a record</comment>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>dia.</source>
        <translation>Ø</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>diameter</source>
        <comment>term</comment>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>diameter_mm</source>
        <comment>column</comment>
        <translation>durchmesser_mm</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>dimensions</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>direction of the handle</source>
        <translation>Richtung des Griffs</translation>
    </message>
    <message>
        <source>direction of the slot</source>
        <translation>Richtung des Schlitzes</translation>
    </message>
    <message>
        <source>direction_x</source>
        <comment>column</comment>
        <translation>richtung_x</translation>
    </message>
    <message>
        <source>direction_y</source>
        <comment>column</comment>
        <translation>richtung_y</translation>
    </message>
    <message>
        <source>direction_z</source>
        <comment>column</comment>
        <translation>richtung_z</translation>
    </message>
    <message>
        <source>distance of the button</source>
        <comment>field of a record</comment>
        <translation>Abstand des Flügels</translation>
    </message>
    <message>
        <source>does not enter</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>done</source>
        <comment>column</comment>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>down</source>
        <translation>abwärts</translation>
    </message>
    <message>
        <source>drag the picture, with Shift turn it about the middle of the nut</source>
        <translation>das Bild ziehen, mit Umschalt um die Mitte des Sattels drehen</translation>
    </message>
    <message>
        <source>drag to the other end</source>
        <translation>zum anderen Ende ziehen</translation>
    </message>
    <message>
        <source>drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>drawn {scale}</source>
        <translation>gezeichnet {scale}</translation>
    </message>
    <message>
        <source>drill</source>
        <translation>Bohrer</translation>
    </message>
    <message>
        <source>drill</source>
        <comment>column</comment>
        <translation>bohrer</translation>
    </message>
    <message>
        <source>drill</source>
        <comment>field of a record</comment>
        <translation>Bohrer</translation>
    </message>
    <message>
        <source>drill press</source>
        <comment>term</comment>
        <translation>Bohrmaschine</translation>
    </message>
    <message>
        <source>drill press square to the face</source>
        <translation>Bohrmaschine winklig zur Vorderseite</translation>
    </message>
    <message>
        <source>drill press, {bit}, {wide} wide; {surface} up, the {lies} against the fence.</source>
        <translation>Bohrmaschine, {bit}, {wide} weit; {surface} oben, {lies} am Anschlag.</translation>
    </message>
    <message>
        <source>drill wander</source>
        <translation>Verlaufen des Bohrers</translation>
    </message>
    <message>
        <source>drill wander in 50 mm</source>
        <comment>field of a record</comment>
        <translation>Verlaufen des Bohrers auf 50 mm</translation>
    </message>
    <message>
        <source>drilled otherwise than it is drawn</source>
        <translation>anders gebohrt, als es gezeichnet ist</translation>
    </message>
    <message>
        <source>drilled: a move here moves the plan alone</source>
        <translation>gebohrt: Verschieben ändert nur den Plan</translation>
    </message>
    <message>
        <source>drills</source>
        <translation>Bohrer</translation>
    </message>
    <message>
        <source>each</source>
        <translation>je</translation>
    </message>
    <message>
        <source>each to the edge</source>
        <translation>jeder zur Kante</translation>
    </message>
    <message>
        <source>ear</source>
        <comment>field of a record</comment>
        <translation>Ohr</translation>
    </message>
    <message>
        <source>ear {ear}</source>
        <translation>Ohr {ear}</translation>
    </message>
    <message>
        <source>ears</source>
        <comment>term</comment>
        <translation>Ohren</translation>
    </message>
    <message>
        <source>ears, slots, tuners, pins and holes</source>
        <translation>Ohren, Schlitze, Mechaniken, Stifte und Bohrungen</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>edge pilot</source>
        <comment>term</comment>
        <translation>Vorbohrung an der Kante</translation>
    </message>
    <message>
        <source>end</source>
        <comment>field of a record</comment>
        <translation>Ende</translation>
    </message>
    <message>
        <source>end grain</source>
        <comment>term</comment>
        <translation>Hirnholz</translation>
    </message>
    <message>
        <source>end of the blank behind the nut line</source>
        <translation>Ende des Rohlings hinter der Sattellinie</translation>
    </message>
    <message>
        <source>enters</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>equal centres</source>
        <translation>gleiche Mittenabstände</translation>
    </message>
    <message>
        <source>equal gaps between strings</source>
        <translation>gleiche Lücken zwischen Saiten</translation>
    </message>
    <message>
        <source>every margin kept: {chance}</source>
        <translation>alle Mindestabstände: {chance}</translation>
    </message>
    <message>
        <source>every other margin kept: {chance}</source>
        <translation>alle anderen Mindestabstände: {chance}</translation>
    </message>
    <message>
        <source>everything times</source>
        <comment>field of a record</comment>
        <translation>alles mal</translation>
    </message>
    <message>
        <source>face</source>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>face</source>
        <comment>term</comment>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>face and side in turn</source>
        <translation>Vorderseite und Seite im Wechsel</translation>
    </message>
    <message>
        <source>face veneer</source>
        <translation>Deckfurnier</translation>
    </message>
    <message>
        <source>face veneer</source>
        <comment>field of a record</comment>
        <translation>Deckfurnier</translation>
    </message>
    <message>
        <source>face {size} bushing four screws</source>
        <comment>name of a feature</comment>
        <translation>vorn {size} Buchse vier Schrauben</translation>
    </message>
    <message>
        <source>face {size} bushing one screw</source>
        <comment>name of a feature</comment>
        <translation>vorn {size} Buchse eine Schraube</translation>
    </message>
    <message>
        <source>face {size} bushing two screws</source>
        <comment>name of a feature</comment>
        <translation>vorn {size} Buchse zwei Schrauben</translation>
    </message>
    <message>
        <source>face {size} friction peg</source>
        <comment>name of a feature</comment>
        <translation>vorn {size} Reibwirbel</translation>
    </message>
    <message>
        <source>face {size} geared peg</source>
        <comment>name of a feature</comment>
        <translation>vorn {size} Wirbel mit Getriebe</translation>
    </message>
    <message>
        <source>face {size} plain one screw</source>
        <comment>name of a feature</comment>
        <translation>vorn {size} glatt eine Schraube</translation>
    </message>
    <message>
        <source>face {size} stepped two pins</source>
        <comment>name of a feature</comment>
        <translation>vorn {size} gestuft zwei Stifte</translation>
    </message>
    <message>
        <source>face {size} tapered peg</source>
        <comment>name of a feature</comment>
        <translation>vorn {size} konischer Wirbel</translation>
    </message>
    <message>
        <source>far arm of {slot}</source>
        <translation>Gegenarm von {slot}</translation>
    </message>
    <message>
        <source>far end of the blank</source>
        <translation>Ende des Rohlings an der Spitze</translation>
    </message>
    <message>
        <source>fence</source>
        <translation>Anschlag</translation>
    </message>
    <message>
        <source>final diameter</source>
        <comment>term</comment>
        <translation>Fertigmaß</translation>
    </message>
    <message>
        <source>finish</source>
        <comment>term</comment>
        <translation>Lackieren</translation>
    </message>
    <message>
        <source>finished outline</source>
        <translation>fertiger Umriss</translation>
    </message>
    <message>
        <source>finished slot</source>
        <translation>fertiger Schlitz</translation>
    </message>
    <message>
        <source>first</source>
        <comment>field of a record</comment>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>first to last</source>
        <translation>erste bis letzte</translation>
    </message>
    <message>
        <source>first to last string</source>
        <comment>field of a record</comment>
        <translation>erste bis letzte Saite</translation>
    </message>
    <message>
        <source>five times full size</source>
        <translation>fünffache Größe</translation>
    </message>
    <message>
        <source>flat</source>
        <comment>term</comment>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>floor of {slot}</source>
        <translation>Boden von {slot}</translation>
    </message>
    <message>
        <source>fold</source>
        <translation>Falz</translation>
    </message>
    <message>
        <source>follower</source>
        <translation>Führung</translation>
    </message>
    <message>
        <source>follower in the template</source>
        <comment>field of a record</comment>
        <translation>Führung in der Schablone</translation>
    </message>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <source>for a pilot of {diameter}, through</source>
        <translation>für eine Vorbohrung von {diameter}, durchgehend</translation>
    </message>
    <message>
        <source>for a pilot of {diameter}, {depth} deep</source>
        <translation>für eine Vorbohrung von {diameter}, {depth} tief</translation>
    </message>
    <message>
        <source>forstner</source>
        <comment>term</comment>
        <translation>Forstner</translation>
    </message>
    <message>
        <source>forstner {size}</source>
        <comment>name of a feature</comment>
        <translation>Forstner {size}</translation>
    </message>
    <message>
        <source>forstner {size} in</source>
        <comment>name of a feature</comment>
        <translation>Forstner {size} Zoll</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>from base line</source>
        <translation>ab Grundlinie</translation>
    </message>
    <message>
        <source>from nut</source>
        <translation>ab Sattel</translation>
    </message>
    <message>
        <source>from the back at x {x} mm, y {y} mm</source>
        <translation>von der Rückseite bei x {x} mm, y {y} mm</translation>
    </message>
    <message>
        <source>from the bass edge at y {y} mm</source>
        <translation>von der Basskante bei y {y} mm</translation>
    </message>
    <message>
        <source>from the bass end</source>
        <translation>vom Bassende</translation>
    </message>
    <message>
        <source>from the face at x {x} mm, y {y} mm</source>
        <translation>von der Vorderseite bei x {x} mm, y {y} mm</translation>
    </message>
    <message>
        <source>from the face, {scale}</source>
        <translation>von vorn, {scale}</translation>
    </message>
    <message>
        <source>from the nut line to the tip, over the whole width; trimmed with the outline</source>
        <translation>von der Sattellinie bis zur Spitze, über die ganze Breite; mit dem Umriss besäumt</translation>
    </message>
    <message>
        <source>from the side</source>
        <translation>von der Seite</translation>
    </message>
    <message>
        <source>from the treble edge at y {y} mm</source>
        <translation>von der Diskantkante bei y {y} mm</translation>
    </message>
    <message>
        <source>from the {line}</source>
        <translation>von der {line}</translation>
    </message>
    <message>
        <source>from tuner to tuner</source>
        <translation>von Mechanik zu Mechanik</translation>
    </message>
    <message>
        <source>from y {y} mm, {long} mm long, {wide} mm wide and {deep} mm deep</source>
        <translation>ab y {y} mm, {long} mm lang, {wide} mm breit und {deep} mm tief</translation>
    </message>
    <message>
        <source>from {begins} mm below the face to the back</source>
        <translation>von {begins} mm unter der Vorderseite bis zur Rückseite</translation>
    </message>
    <message>
        <source>from {begins} mm to {ends} mm below the face</source>
        <translation>von {begins} mm bis {ends} mm unter der Vorderseite</translation>
    </message>
    <message>
        <source>from {one:,} to {two:,} in {whole:,}</source>
        <translation>von {one:,} auf {two:,} von {whole:,}</translation>
    </message>
    <message>
        <source>from {one} to {two}</source>
        <translation>von {one} auf {two}</translation>
    </message>
    <message>
        <source>from {thing}</source>
        <translation>von {thing}</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>full size</source>
        <translation>volle Größe</translation>
    </message>
    <message>
        <source>glue back veneer</source>
        <comment>term</comment>
        <translation>Rückenfurnier aufleimen</translation>
    </message>
    <message>
        <source>glue ear</source>
        <comment>term</comment>
        <translation>Ohr anleimen</translation>
    </message>
    <message>
        <source>glue face veneer</source>
        <comment>term</comment>
        <translation>Deckfurnier aufleimen</translation>
    </message>
    <message>
        <source>glue line</source>
        <translation>Leimfuge</translation>
    </message>
    <message>
        <source>glue line of {ear}</source>
        <translation>Leimfuge von {ear}</translation>
    </message>
    <message>
        <source>glue scarf</source>
        <comment>term</comment>
        <translation>Schäftung leimen</translation>
    </message>
    <message>
        <source>glued on otherwise than it is drawn</source>
        <translation>anders angeleimt, als es gezeichnet ist</translation>
    </message>
    <message>
        <source>glued on: a change here changes the plan alone</source>
        <translation>schon angeleimt: Eine Änderung hier ändert nur den Plan</translation>
    </message>
    <message>
        <source>glued up with a scarf joint behind the nut line, sawn at {pitch}</source>
        <translation>verleimt mit einer Schäftung hinter der Sattellinie, gesägt mit {pitch}</translation>
    </message>
    <message>
        <source>glued up with a scarf joint {long} long, sawn at {pitch}: the head piece reaches {head} from the tip on the back, and the neck is {neck} thick over it</source>
        <translation>verleimt mit einer {long} langen Schäftung, gesägt mit {pitch}: das Kopfstück reicht auf der Rückseite {head} von der Spitze, und der Hals ist darüber {neck} dick</translation>
    </message>
    <message>
        <source>goes with the waste, a slot or a later hole</source>
        <translation>geht mit dem Verschnitt, einem Schlitz oder einem späteren Loch</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>grid {length}</source>
        <translation>Raster {length}</translation>
    </message>
    <message>
        <source>guessed from its size</source>
        <translation>aus der Größe geraten</translation>
    </message>
    <message>
        <source>guide bush</source>
        <comment>term</comment>
        <translation>Kopierhülse</translation>
    </message>
    <message>
        <source>half size</source>
        <translation>halbe Größe</translation>
    </message>
    <message>
        <source>half the thickness</source>
        <translation>halbe Dicke</translation>
    </message>
    <message>
        <source>hand drill</source>
        <comment>term</comment>
        <translation>Handbohrmaschine</translation>
    </message>
    <message>
        <source>handle of the {of}</source>
        <translation>Griff ({of})</translation>
    </message>
    <message>
        <source>handle {step}</source>
        <translation>Griff {step}</translation>
    </message>
    <message>
        <source>handles</source>
        <comment>field of a record</comment>
        <translation>Griffe</translation>
    </message>
    <message>
        <source>hardboard or plywood, as large as the blank{more}</source>
        <translation>Hartfaser oder Sperrholz, so groß wie der Rohling{more}</translation>
    </message>
    <message>
        <source>hardboard or plywood, {spare} to spare all round{more}</source>
        <translation>Hartfaser oder Sperrholz, ringsum {spare} Zugabe{more}</translation>
    </message>
    <message>
        <source>hardware mirrored for this edge</source>
        <translation>Mechanik für diese Kante gespiegelt</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Kopfplatte</translation>
    </message>
    <message>
        <source>heading</source>
        <comment>field of a record</comment>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>height</source>
        <comment>field of a record</comment>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>hole</source>
        <comment>name of a feature</comment>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>hole</source>
        <comment>term</comment>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>hole that is there</source>
        <comment>term</comment>
        <translation>vorhandene Bohrung</translation>
    </message>
    <message>
        <source>holes</source>
        <comment>term</comment>
        <translation>Bohrungen</translation>
    </message>
    <message>
        <source>how</source>
        <translation>wie</translation>
    </message>
    <message>
        <source>how deep the ramp of {slot} is filed</source>
        <translation>wie tief die Rampe von {slot} gefeilt wird</translation>
    </message>
    <message>
        <source>how square {what} is drilled</source>
        <translation>wie winklig {what} gebohrt wird</translation>
    </message>
    <message>
        <source>how the outline is followed</source>
        <translation>wie genau dem Umriss gefolgt wird</translation>
    </message>
    <message>
        <source>how {slot} is followed</source>
        <translation>wie genau {slot} gefolgt wird</translation>
    </message>
    <message>
        <source>id</source>
        <comment>column</comment>
        <translation>name</translation>
    </message>
    <message>
        <source>impossible</source>
        <comment>term</comment>
        <translation>unmöglich</translation>
    </message>
    <message>
        <source>in later holes or on the centreline</source>
        <translation>in späteren Bohrungen oder auf der Mittellinie</translation>
    </message>
    <message>
        <source>in line with its other end</source>
        <translation>in Flucht mit dem anderen Ende</translation>
    </message>
    <message>
        <source>in line with the edge beside it</source>
        <translation>in Flucht mit der Kante daneben</translation>
    </message>
    <message>
        <source>in line with {name}</source>
        <translation>in Flucht mit {name}</translation>
    </message>
    <message>
        <source>in one drilling</source>
        <translation>in einem Bohrgang</translation>
    </message>
    <message>
        <source>in one pass</source>
        <translation>in einem Durchgang</translation>
    </message>
    <message>
        <source>in the rack</source>
        <translation>im Bestand</translation>
    </message>
    <message>
        <source>in the rack, {remark}</source>
        <translation>im Bestand, {remark}</translation>
    </message>
    <message>
        <source>in {n} drillings</source>
        <translation>in {n} Bohrgängen</translation>
    </message>
    <message>
        <source>in {n} pass</source>
        <translation>in {n} Durchgang</translation>
    </message>
    <message>
        <source>in {n} pass, turned over once</source>
        <translation>in {n} Durchgang, einmal gewendet</translation>
    </message>
    <message>
        <source>in {n} passes</source>
        <translation>in {n} Durchgängen</translation>
    </message>
    <message>
        <source>in {n} passes, turned over once</source>
        <translation>in {n} Durchgängen, einmal gewendet</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>inner wall</source>
        <comment>term</comment>
        <translation>Innenwand</translation>
    </message>
    <message>
        <source>inset</source>
        <comment>field of a record</comment>
        <translation>Abstand von der Kante</translation>
    </message>
    <message>
        <source>inside diameter</source>
        <comment>field of a record</comment>
        <translation>Innendurchmesser</translation>
    </message>
    <message>
        <source>is plugged first</source>
        <translation>wird verschlossen</translation>
    </message>
    <message>
        <source>is there already</source>
        <translation>ist schon da</translation>
    </message>
    <message>
        <source>is to be drilled</source>
        <translation>ist zu bohren</translation>
    </message>
    <message>
        <source>is to be routed</source>
        <translation>wird gefräst</translation>
    </message>
    <message>
        <source>it cannot be read.</source>
        <translation>sie ist nicht lesbar.</translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translation>ein Ordner, keine Datei</translation>
    </message>
    <message>
        <source>it is a folder, a device or a pipe and no file</source>
        <translation>es ist ein Ordner, ein Gerät oder eine Pipe und keine Datei</translation>
    </message>
    <message>
        <source>it is nested too deeply.</source>
        <translation>sie ist zu tief verschachtelt.</translation>
    </message>
    <message>
        <source>it is not there</source>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>it stands {stick_out} out of the router and the template takes {template} of that</source>
        <translation>er steht {stick_out} aus der Oberfräse vor, und die Schablone nimmt davon {template}</translation>
    </message>
    <message>
        <source>item</source>
        <comment>column</comment>
        <translation>posten</translation>
    </message>
    <message>
        <source>its bearing is wider than the cutter and must stay out of the wood</source>
        <translation>sein Anlaufring ist breiter als die Schneide und muss außerhalb des Holzes bleiben</translation>
    </message>
    <message>
        <source>its folder is not there</source>
        <translation>ihr Ordner ist nicht da</translation>
    </message>
    <message>
        <source>its horizon runs through it</source>
        <translation>sein Horizont läuft hindurch</translation>
    </message>
    <message>
        <source>its name is too long</source>
        <translation>ihr Name ist zu lang</translation>
    </message>
    <message>
        <source>its plate</source>
        <translation>ihrer Platte</translation>
    </message>
    <message>
        <source>its {shank} shank is thicker than the cutter and must stay out of the wood</source>
        <translation>sein Schaft von {shank} ist dicker als die Schneide und muss außerhalb des Holzes bleiben</translation>
    </message>
    <message>
        <source>job-book</source>
        <translation>Werkbuch</translation>
    </message>
    <message>
        <source>keeps every margin</source>
        <translation>alle Mindestabstände hält</translation>
    </message>
    <message>
        <source>kind</source>
        <comment>column</comment>
        <translation>art</translation>
    </message>
    <message>
        <source>lacking</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>large tuners through the face</source>
        <translation>große Mechaniken durch die Vorderseite</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>length</source>
        <comment>term</comment>
        <translation>Länge</translation>
    </message>
    <message>
        <source>length of the blank</source>
        <translation>Länge des Rohlings</translation>
    </message>
    <message>
        <source>length {length}</source>
        <translation>Länge {length}</translation>
    </message>
    <message>
        <source>length {length} over the ends, {place}</source>
        <translation>Länge {length} über die Enden, {place}</translation>
    </message>
    <message>
        <source>length {length}, angle {angle}</source>
        <translation>Länge {length}, Winkel {angle}</translation>
    </message>
    <message>
        <source>length {length}, {place}</source>
        <translation>Länge {length}, {place}</translation>
    </message>
    <message>
        <source>length_mm</source>
        <comment>column</comment>
        <translation>laenge_mm</translation>
    </message>
    <message>
        <source>less than 1 in 10,000</source>
        <translation>weniger als 1 von 10 000</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagrecht</translation>
    </message>
    <message>
        <source>level with its node</source>
        <translation>auf Höhe seines Knotens</translation>
    </message>
    <message>
        <source>level with {name}</source>
        <translation>auf Höhe von {name}</translation>
    </message>
    <message>
        <source>line of the scarf joint</source>
        <translation>Fuge der Schäftung</translation>
    </message>
    <message>
        <source>list</source>
        <comment>column</comment>
        <translation>liste</translation>
    </message>
    <message>
        <source>locating pin</source>
        <comment>term</comment>
        <translation>Passstift</translation>
    </message>
    <message>
        <source>locating pin hole</source>
        <comment>term</comment>
        <translation>Passstiftbohrung</translation>
    </message>
    <message>
        <source>lying</source>
        <comment>term</comment>
        <translation>liegende</translation>
    </message>
    <message>
        <source>machine</source>
        <comment>column</comment>
        <translation>maschine</translation>
    </message>
    <message>
        <source>margins</source>
        <comment>field of a record</comment>
        <translation>Mindestabstände</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Anriss</translation>
    </message>
    <message>
        <source>mark</source>
        <comment>term</comment>
        <translation>Anreißen</translation>
    </message>
    <message>
        <source>mark here</source>
        <translation>Anriss</translation>
    </message>
    <message>
        <source>mark_x_mm</source>
        <comment>column</comment>
        <translation>anriss_x_mm</translation>
    </message>
    <message>
        <source>mark_y_mm</source>
        <comment>column</comment>
        <translation>anriss_y_mm</translation>
    </message>
    <message>
        <source>mark_z_mm</source>
        <comment>column</comment>
        <translation>anriss_z_mm</translation>
    </message>
    <message>
        <source>marks</source>
        <translation>Anrisse</translation>
    </message>
    <message>
        <source>marks of {tuner}</source>
        <translation>Anrisse von {tuner}</translation>
    </message>
    <message>
        <source>middle of edge {i} of {name}</source>
        <translation>Mitte der Kante {i} von {name}</translation>
    </message>
    <message>
        <source>middle of {slot}</source>
        <translation>Mitte von {slot}</translation>
    </message>
    <message>
        <source>middle to middle</source>
        <translation>Mitte zu Mitte</translation>
    </message>
    <message>
        <source>midway between {a} and {b}</source>
        <translation>mitten zwischen {a} und {b}</translation>
    </message>
    <message>
        <source>mirrored</source>
        <translation>spiegelbildlich</translation>
    </message>
    <message>
        <source>mirrors the {end} of {slot}</source>
        <translation>spiegelt das {end} von {slot}</translation>
    </message>
    <message>
        <source>mirrors {what}</source>
        <translation>spiegelt {what}</translation>
    </message>
    <message>
        <source>mixed tuners</source>
        <translation>gemischte Mechaniken</translation>
    </message>
    <message>
        <source>money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>moved across</source>
        <translation>quer versetzt</translation>
    </message>
    <message>
        <source>moved along</source>
        <translation>längs versetzt</translation>
    </message>
    <message>
        <source>moved {across} across, {along} along</source>
        <translation>{across} quer, {along} längs versetzt</translation>
    </message>
    <message>
        <source>name</source>
        <comment>column</comment>
        <translation>bezeichnung</translation>
    </message>
    <message>
        <source>name</source>
        <comment>field of a record</comment>
        <translation>Name</translation>
    </message>
    <message>
        <source>name and diameter of each, {sizes}</source>
        <translation>Name und Durchmesser von jeder, {sizes}</translation>
    </message>
    <message>
        <source>name and diameter of each: under Strings in the nut</source>
        <translation>Name und Durchmesser: unter „Saiten im Sattel“</translation>
    </message>
    <message>
        <source>nearly always</source>
        <translation>fast immer</translation>
    </message>
    <message>
        <source>neck</source>
        <translation>Hals</translation>
    </message>
    <message>
        <source>new bit</source>
        <comment>name of a feature</comment>
        <translation>neuer Fräser</translation>
    </message>
    <message>
        <source>new bush</source>
        <comment>name of a feature</comment>
        <translation>neue Hülse</translation>
    </message>
    <message>
        <source>new drill</source>
        <comment>name of a feature</comment>
        <translation>neuer Bohrer</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no edge</source>
        <translation>keine Kante</translation>
    </message>
    <message>
        <source>no ramp</source>
        <translation>keine Rampe</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>St.</translation>
    </message>
    <message>
        <source>nobody knows: the outline has no inside</source>
        <translation>nicht zu sagen: der Umriss hat kein Inneres</translation>
    </message>
    <message>
        <source>node {i} of this line</source>
        <translation>Knoten {i} dieser Linie</translation>
    </message>
    <message>
        <source>node {number} of the outline</source>
        <translation>Knoten {number} des Umrisses</translation>
    </message>
    <message>
        <source>node {number} of the {of}</source>
        <translation>Knoten {number} ({of})</translation>
    </message>
    <message>
        <source>node {number} of {slot}</source>
        <translation>Knoten {number} von {slot}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>keiner gewählt</translation>
    </message>
    <message>
        <source>none, it goes through</source>
        <translation>keines, sie geht durch</translation>
    </message>
    <message>
        <source>none: the axis never meets that edge</source>
        <translation>keiner: die Achse trifft diese Kante nie</translation>
    </message>
    <message>
        <source>none: the bore is as wide as the outside</source>
        <translation>keine: die Bohrung ist so weit wie außen</translation>
    </message>
    <message>
        <source>not alike</source>
        <translation>nicht gleich</translation>
    </message>
    <message>
        <source>not at {mark}, squared</source>
        <translation>nicht {mark}, gewinkelt</translation>
    </message>
    <message>
        <source>not guided by the template</source>
        <translation>von der Schablone nicht geführt</translation>
    </message>
    <message>
        <source>not here</source>
        <translation>nicht hier</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>not reamed</source>
        <translation>nicht aufgerieben</translation>
    </message>
    <message>
        <source>not said in its record</source>
        <translation>in den Angaben nicht genannt</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht hier</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>note</source>
        <comment>term</comment>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>nothing more is taken there</source>
        <translation>dort wird nichts mehr angenommen</translation>
    </message>
    <message>
        <source>nut</source>
        <translation>Sattel</translation>
    </message>
    <message>
        <source>nut</source>
        <comment>term</comment>
        <translation>Sattel</translation>
    </message>
    <message>
        <source>nut end</source>
        <comment>term</comment>
        <translation>Sattelende</translation>
    </message>
    <message>
        <source>nut line</source>
        <translation>Sattellinie</translation>
    </message>
    <message>
        <source>nut line</source>
        <comment>term</comment>
        <translation>Sattellinie</translation>
    </message>
    <message>
        <source>nut line on the centreline</source>
        <translation>Sattellinie auf der Mittellinie</translation>
    </message>
    <message>
        <source>nut line, {angle}</source>
        <translation>Sattellinie, {angle}</translation>
    </message>
    <message>
        <source>nut pin</source>
        <comment>name of a feature</comment>
        <translation>Sattelstift</translation>
    </message>
    <message>
        <source>nut, bass end</source>
        <translation>Sattel, Bassende</translation>
    </message>
    <message>
        <source>nut, treble end</source>
        <translation>Sattel, Diskantende</translation>
    </message>
    <message>
        <source>of</source>
        <comment>column</comment>
        <translation>teil</translation>
    </message>
    <message>
        <source>offset</source>
        <translation>Versatz</translation>
    </message>
    <message>
        <source>old</source>
        <translation>alt</translation>
    </message>
    <message>
        <source>on the back</source>
        <translation>auf der Rückseite</translation>
    </message>
    <message>
        <source>on the centreline</source>
        <translation>auf der Mittellinie</translation>
    </message>
    <message>
        <source>on the centreline or mirrored about it</source>
        <translation>auf der Mittellinie oder zu ihr gespiegelt</translation>
    </message>
    <message>
        <source>on the centreline, {along}</source>
        <translation>auf der Mittellinie, {along}</translation>
    </message>
    <message>
        <source>on the face</source>
        <translation>auf der Vorderseite</translation>
    </message>
    <message>
        <source>on the shank</source>
        <translation>am Schaft</translation>
    </message>
    <message>
        <source>on the template</source>
        <translation>an der Schablone</translation>
    </message>
    <message>
        <source>on the template below</source>
        <translation>an der Schablone darunter</translation>
    </message>
    <message>
        <source>on the tip</source>
        <translation>an der Spitze</translation>
    </message>
    <message>
        <source>on the wall already cut</source>
        <translation>an der schon geschnittenen Wand</translation>
    </message>
    <message>
        <source>on {edge}</source>
        <translation>auf {edge}</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <source>one hole</source>
        <translation>eine Bohrung</translation>
    </message>
    <message>
        <source>only {length}</source>
        <translation>nur {length}</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>open, its walls stand</source>
        <translation>offen, die Wände stehen</translation>
    </message>
    <message>
        <source>opening as large as the slot</source>
        <translation>Öffnung so groß wie der Schlitz</translation>
    </message>
    <message>
        <source>opening {by} larger all round</source>
        <translation>Öffnung ringsum {by} größer</translation>
    </message>
    <message>
        <source>opening {by} smaller all round</source>
        <translation>Öffnung ringsum {by} kleiner</translation>
    </message>
    <message>
        <source>openings the same size as the slots</source>
        <translation>Öffnungen so groß wie die Schlitze</translation>
    </message>
    <message>
        <source>openings {offset} larger all round than the slots</source>
        <translation>Öffnungen ringsum {offset} größer als die Schlitze</translation>
    </message>
    <message>
        <source>openings {offset} smaller all round than the slots</source>
        <translation>Öffnungen ringsum {offset} kleiner als die Schlitze</translation>
    </message>
    <message>
        <source>operation</source>
        <translation>Arbeitsgang</translation>
    </message>
    <message>
        <source>operation</source>
        <comment>column</comment>
        <translation>arbeitsgang</translation>
    </message>
    <message>
        <source>opposite {id}</source>
        <translation>gegenüber {id}</translation>
    </message>
    <message>
        <source>outer string on the bass side</source>
        <translation>äußere Saite auf der Bassseite</translation>
    </message>
    <message>
        <source>outer string on the treble side</source>
        <translation>äußere Saite auf der Diskantseite</translation>
    </message>
    <message>
        <source>outline</source>
        <comment>term</comment>
        <translation>Umriss</translation>
    </message>
    <message>
        <source>outline to blank edge</source>
        <comment>field of a record</comment>
        <translation>Umriss zu Rohlingskante</translation>
    </message>
    <message>
        <source>outside diameter</source>
        <comment>field of a record</comment>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>outside the same size as the outline</source>
        <translation>außen so groß wie der Umriss</translation>
    </message>
    <message>
        <source>outside {offset} larger all round than the outline</source>
        <translation>außen ringsum {offset} größer als der Umriss</translation>
    </message>
    <message>
        <source>outside {offset} larger than the outline, cut off at the nut line</source>
        <translation>außen {offset} größer als der Umriss, an der Sattellinie abgeschnitten</translation>
    </message>
    <message>
        <source>outside {offset} smaller all round than the outline</source>
        <translation>außen ringsum {offset} kleiner als der Umriss</translation>
    </message>
    <message>
        <source>outside {offset} smaller than the outline down to the nut line</source>
        <translation>außen bis zur Sattellinie {offset} kleiner als der Umriss</translation>
    </message>
    <message>
        <source>over</source>
        <translation>über</translation>
    </message>
    <message>
        <source>over 98 in 100</source>
        <translation>über 98 von 100</translation>
    </message>
    <message>
        <source>over pins</source>
        <comment>term</comment>
        <translation>über Stifte</translation>
    </message>
    <message>
        <source>over the post</source>
        <translation>über die Welle</translation>
    </message>
    <message>
        <source>over the walls</source>
        <comment>term</comment>
        <translation>über die Wände</translation>
    </message>
    <message>
        <source>over the wood</source>
        <comment>term</comment>
        <translation>über das Holz</translation>
    </message>
    <message>
        <source>over {n:,} in {whole:,}</source>
        <translation>über {n:,} von {whole:,}</translation>
    </message>
    <message>
        <source>page {number} of {all}</source>
        <translation>Seite {number} von {all}</translation>
    </message>
    <message>
        <source>page {page}</source>
        <translation>Seite {page}</translation>
    </message>
    <message>
        <source>pages {first} to {last}</source>
        <translation>Seiten {first} bis {last}</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>pass {index} of {passes}, {side} up: {bit}</source>
        <translation>Durchgang {index} von {passes}, {side} oben: {bit}</translation>
    </message>
    <message>
        <source>pattern</source>
        <comment>field of a record</comment>
        <translation>Mechanik</translation>
    </message>
    <message>
        <source>patterns</source>
        <translation>Bohrbilder</translation>
    </message>
    <message>
        <source>patterns</source>
        <comment>term</comment>
        <translation>Bohrbilder</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>piece</source>
        <comment>column</comment>
        <translation>stueck</translation>
    </message>
    <message>
        <source>pilot</source>
        <translation>Vorb.</translation>
    </message>
    <message>
        <source>pilot</source>
        <comment>term</comment>
        <translation>Vorbohrung</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Stift</translation>
    </message>
    <message>
        <source>pin</source>
        <comment>name of a feature</comment>
        <translation>Stift</translation>
    </message>
    <message>
        <source>pin</source>
        <comment>term</comment>
        <translation>Stift</translation>
    </message>
    <message>
        <source>pin hole</source>
        <comment>term</comment>
        <translation>Stiftloch</translation>
    </message>
    <message>
        <source>pin holes</source>
        <comment>term</comment>
        <translation>Stiftlöcher</translation>
    </message>
    <message>
        <source>pin outside, {wide}</source>
        <translation>Stift außerhalb, {wide}</translation>
    </message>
    <message>
        <source>pin to anything</source>
        <comment>field of a record</comment>
        <translation>Stift zu allem</translation>
    </message>
    <message>
        <source>pins</source>
        <comment>term</comment>
        <translation>Stifte</translation>
    </message>
    <message>
        <source>pitch</source>
        <comment>field of a record</comment>
        <translation>Kopfwinkel</translation>
    </message>
    <message>
        <source>pitch of the head</source>
        <translation>Kopfwinkel</translation>
    </message>
    <message>
        <source>place</source>
        <comment>column</comment>
        <translation>Ort</translation>
    </message>
    <message>
        <source>place</source>
        <comment>field of a record</comment>
        <translation>Ort</translation>
    </message>
    <message>
        <source>plain</source>
        <translation>blank</translation>
    </message>
    <message>
        <source>plan {letters}</source>
        <translation>Plan {letters}</translation>
    </message>
    <message>
        <source>planned</source>
        <comment>column</comment>
        <translation>geplant</translation>
    </message>
    <message>
        <source>planned, min</source>
        <translation>Plan, min</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>plate inside the edge</source>
        <comment>field of a record</comment>
        <translation>Platte innerhalb der Kante</translation>
    </message>
    <message>
        <source>plate to plate</source>
        <comment>field of a record</comment>
        <translation>Platte zu Platte</translation>
    </message>
    <message>
        <source>plug</source>
        <comment>term</comment>
        <translation>Löcher verschließen</translation>
    </message>
    <message>
        <source>plug of wood</source>
        <translation>Holzstopfen</translation>
    </message>
    <message>
        <source>plunge</source>
        <comment>field of a record</comment>
        <translation>Hub</translation>
    </message>
    <message>
        <source>pocket</source>
        <translation>Tasche</translation>
    </message>
    <message>
        <source>pocket</source>
        <comment>name of a feature</comment>
        <translation>Tasche</translation>
    </message>
    <message>
        <source>pocket</source>
        <comment>term</comment>
        <translation>Tasche</translation>
    </message>
    <message>
        <source>pocket that is there</source>
        <comment>term</comment>
        <translation>vorhandene Tasche</translation>
    </message>
    <message>
        <source>point angle</source>
        <comment>field of a record</comment>
        <translation>Spitzenwinkel</translation>
    </message>
    <message>
        <source>post</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>post</source>
        <comment>term</comment>
        <translation>Welle</translation>
    </message>
    <message>
        <source>post bore</source>
        <comment>in a narrow column</comment>
        <translation>Welle</translation>
    </message>
    <message>
        <source>post bore</source>
        <comment>term</comment>
        <translation>Wellenbohrung</translation>
    </message>
    <message>
        <source>post bores</source>
        <comment>term</comment>
        <translation>Wellenbohrungen</translation>
    </message>
    <message>
        <source>post end to inner wall</source>
        <comment>field of a record</comment>
        <translation>Wellenende zu Innenwand</translation>
    </message>
    <message>
        <source>practice</source>
        <comment>term</comment>
        <translation>Probestück</translation>
    </message>
    <message>
        <source>practice piece</source>
        <translation>Probestück</translation>
    </message>
    <message>
        <source>press</source>
        <comment>field of a record</comment>
        <translation>Bohrmaschine</translation>
    </message>
    <message>
        <source>press and drag to lay a section line</source>
        <translation>klicken und ziehen, um eine Schnittlinie zu legen</translation>
    </message>
    <message>
        <source>press on the first thing</source>
        <translation>das erste Teil anklicken</translation>
    </message>
    <message>
        <source>press where one end goes</source>
        <translation>klicken, wohin ein Ende kommt</translation>
    </message>
    <message>
        <source>press where the hole goes</source>
        <translation>klicken, wohin die Bohrung kommt</translation>
    </message>
    <message>
        <source>press where the line begins</source>
        <translation>klicken, wo die Linie beginnt</translation>
    </message>
    <message>
        <source>press where the pin goes</source>
        <translation>klicken, wohin der Passstift kommt</translation>
    </message>
    <message>
        <source>press where the tuner goes</source>
        <translation>klicken, wohin die Mechanik kommt</translation>
    </message>
    <message>
        <source>printed on the cutter</source>
        <translation>auf dem Fräser aufgedruckt</translation>
    </message>
    <message>
        <source>printed paper</source>
        <translation>gedrucktes Papier</translation>
    </message>
    <message>
        <source>printed paper</source>
        <comment>field of a record</comment>
        <translation>gedrucktes Papier</translation>
    </message>
    <message>
        <source>quill travel</source>
        <comment>field of a record</comment>
        <translation>Pinolenhub</translation>
    </message>
    <message>
        <source>rack</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>radius</source>
        <comment>term</comment>
        <translation>Radius</translation>
    </message>
    <message>
        <source>radius {radius}, length {length}</source>
        <translation>Radius {radius}, Länge {length}</translation>
    </message>
    <message>
        <source>radius {radius}, {length}</source>
        <translation>Radius {radius}, {length}</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>Wange</translation>
    </message>
    <message>
        <source>rail</source>
        <comment>term</comment>
        <translation>Wange</translation>
    </message>
    <message>
        <source>raised end</source>
        <translation>angehoben</translation>
    </message>
    <message>
        <source>ramp</source>
        <translation>Rampe</translation>
    </message>
    <message>
        <source>ramp</source>
        <comment>term</comment>
        <translation>Rampe</translation>
    </message>
    <message>
        <source>ramp of {slot}</source>
        <translation>Rampe von {slot}</translation>
    </message>
    <message>
        <source>rates</source>
        <comment>field of a record</comment>
        <translation>Zeiten</translation>
    </message>
    <message>
        <source>reach</source>
        <comment>field of a record</comment>
        <translation>Reichweite</translation>
    </message>
    <message>
        <source>reach below the base</source>
        <comment>field of a record</comment>
        <translation>Überstand aus der Fußplatte</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gelesen</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>real</source>
        <comment>term</comment>
        <translation>echtes Stück</translation>
    </message>
    <message>
        <source>real piece</source>
        <translation>echtes Stück</translation>
    </message>
    <message>
        <source>reamed</source>
        <comment>field of a record</comment>
        <translation>Maß nach dem Aufreiben</translation>
    </message>
    <message>
        <source>reamed_to_mm</source>
        <comment>column</comment>
        <translation>aufgerieben_auf_mm</translation>
    </message>
    <message>
        <source>reamer 1:{taper:g}</source>
        <translation>Reibahle 1:{taper:g}</translation>
    </message>
    <message>
        <source>reamer {diameter}</source>
        <translation>Reibahle {diameter}</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>rest of the base</source>
        <comment>field of a record</comment>
        <translation>Auflage der Fußplatte</translation>
    </message>
    <message>
        <source>retainer</source>
        <comment>name of a feature</comment>
        <translation>Niederhalter</translation>
    </message>
    <message>
        <source>rounded by {depth}</source>
        <translation>gerundet um {depth}</translation>
    </message>
    <message>
        <source>rout</source>
        <comment>term</comment>
        <translation>Fräsen</translation>
    </message>
    <message>
        <source>rout outline</source>
        <comment>term</comment>
        <translation>Umriss fräsen</translation>
    </message>
    <message>
        <source>routed {deep} of {depth}</source>
        <translation>{deep} von {depth} gefräst</translation>
    </message>
    <message>
        <source>router</source>
        <comment>term</comment>
        <translation>Oberfräse</translation>
    </message>
    <message>
        <source>routes</source>
        <translation>Fräswege</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>rows</source>
        <comment>term</comment>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>same step as from {a} to {b}</source>
        <translation>gleicher Schritt wie von {a} zu {b}</translation>
    </message>
    <message>
        <source>saved</source>
        <translation>gespeichert</translation>
    </message>
    <message>
        <source>saw</source>
        <comment>term</comment>
        <translation>Sägen</translation>
    </message>
    <message>
        <source>scale length</source>
        <translation>Mensur</translation>
    </message>
    <message>
        <source>scale length</source>
        <comment>field of a record</comment>
        <translation>Mensur</translation>
    </message>
    <message>
        <source>scale length on the treble side</source>
        <translation>Mensur auf der Diskantseite</translation>
    </message>
    <message>
        <source>scarf</source>
        <comment>field of a record</comment>
        <translation>Schäftung</translation>
    </message>
    <message>
        <source>scarf joint</source>
        <translation>Schäftung</translation>
    </message>
    <message>
        <source>screw</source>
        <comment>term</comment>
        <translation>Schraubenloch</translation>
    </message>
    <message>
        <source>screw and bore to a feather edge</source>
        <comment>field of a record</comment>
        <translation>Schraube und Bohrung zur auslaufenden Kante</translation>
    </message>
    <message>
        <source>screw holes</source>
        <comment>term</comment>
        <translation>Schraubenlöcher</translation>
    </message>
    <message>
        <source>screw pilot</source>
        <comment>term</comment>
        <translation>Schraubenvorbohrung</translation>
    </message>
    <message>
        <source>screw to anything</source>
        <comment>field of a record</comment>
        <translation>Schraube zu allem</translation>
    </message>
    <message>
        <source>screw to outline</source>
        <comment>field of a record</comment>
        <translation>Schraube zu Umriss</translation>
    </message>
    <message>
        <source>seat</source>
        <translation>Sitz</translation>
    </message>
    <message>
        <source>seat</source>
        <comment>term</comment>
        <translation>Sitz</translation>
    </message>
    <message>
        <source>seat of a tuner</source>
        <translation>Sitz einer Mechanik</translation>
    </message>
    <message>
        <source>section</source>
        <comment>column</comment>
        <translation>abschnitt</translation>
    </message>
    <message>
        <source>section of {length}</source>
        <translation>Schnitt von {length}</translation>
    </message>
    <message>
        <source>seen from the back</source>
        <translation>von hinten gesehen</translation>
    </message>
    <message>
        <source>seen from the face</source>
        <translation>von vorn gesehen</translation>
    </message>
    <message>
        <source>setting up and changing over</source>
        <translation>Rüsten und Umrüsten</translation>
    </message>
    <message>
        <source>shank</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>shank</source>
        <comment>field of a record</comment>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>shaped like the head</source>
        <translation>in Kopfplattenform</translation>
    </message>
    <message>
        <source>sharp: a cutter leaves wood to pare</source>
        <translation>scharf: jeder Fräser lässt Holz zum Nachstechen</translation>
    </message>
    <message>
        <source>sharp: every cutter leaves wood</source>
        <translation>scharf: jeder Fräser lässt Holz</translation>
    </message>
    <message>
        <source>shown now</source>
        <translation>jetzt gezeigt</translation>
    </message>
    <message>
        <source>side</source>
        <comment>term</comment>
        <translation>Seite</translation>
    </message>
    <message>
        <source>side angle</source>
        <translation>Seitenwinkel</translation>
    </message>
    <message>
        <source>side bore</source>
        <comment>term</comment>
        <translation>Seitenbohrung</translation>
    </message>
    <message>
        <source>side counterbore</source>
        <comment>term</comment>
        <translation>seitliche Senkung</translation>
    </message>
    <message>
        <source>side {size} post four screws</source>
        <comment>name of a feature</comment>
        <translation>quer {size} Welle vier Schrauben</translation>
    </message>
    <message>
        <source>side {size} post two screws</source>
        <comment>name of a feature</comment>
        <translation>quer {size} Welle zwei Schrauben</translation>
    </message>
    <message>
        <source>side {size} roller long post</source>
        <comment>name of a feature</comment>
        <translation>quer {size} Walze lange Welle</translation>
    </message>
    <message>
        <source>side {size} roller two screws</source>
        <comment>name of a feature</comment>
        <translation>quer {size} Walze zwei Schrauben</translation>
    </message>
    <message>
        <source>side {size} short post</source>
        <comment>name of a feature</comment>
        <translation>quer {size} kurze Welle</translation>
    </message>
    <message>
        <source>side_up</source>
        <comment>column</comment>
        <translation>seite_oben</translation>
    </message>
    <message>
        <source>size</source>
        <comment>field of a record</comment>
        <translation>Größe</translation>
    </message>
    <message>
        <source>slant</source>
        <comment>field of a record</comment>
        <translation>Schräge</translation>
    </message>
    <message>
        <source>slant of the nut</source>
        <translation>Schräge des Sattels</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>Schlitz</translation>
    </message>
    <message>
        <source>slot</source>
        <comment>name of a feature</comment>
        <translation>Schlitz</translation>
    </message>
    <message>
        <source>slot</source>
        <comment>term</comment>
        <translation>Schlitz</translation>
    </message>
    <message>
        <source>slot to nut line</source>
        <comment>field of a record</comment>
        <translation>Schlitz zu Sattellinie</translation>
    </message>
    <message>
        <source>slots</source>
        <comment>term</comment>
        <translation>Schlitze</translation>
    </message>
    <message>
        <source>slower than this router turns</source>
        <translation>langsamer, als diese Oberfräse dreht</translation>
    </message>
    <message>
        <source>smooth</source>
        <translation>glatt</translation>
    </message>
    <message>
        <source>so that no plug stays in the head</source>
        <translation>damit kein Dübel in der Kopfplatte bleibt</translation>
    </message>
    <message>
        <source>spacing</source>
        <comment>field of a record</comment>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>speed printed on it</source>
        <comment>field of a record</comment>
        <translation>aufgedruckte Drehzahl</translation>
    </message>
    <message>
        <source>speeds</source>
        <comment>field of a record</comment>
        <translation>Drehzahlen</translation>
    </message>
    <message>
        <source>spoil board</source>
        <translation>Opferbrett</translation>
    </message>
    <message>
        <source>spoiled {chance}</source>
        <translation>verdorben {chance}</translation>
    </message>
    <message>
        <source>spoils the work</source>
        <comment>term</comment>
        <translation>verdirbt die Arbeit</translation>
    </message>
    <message>
        <source>spur</source>
        <comment>field of a record</comment>
        <translation>Spitze vor dem Rand</translation>
    </message>
    <message>
        <source>square edge</source>
        <comment>term</comment>
        <translation>gerade Kante</translation>
    </message>
    <message>
        <source>square to the edge before</source>
        <translation>rechtwinklig zur Kante davor</translation>
    </message>
    <message>
        <source>square to {edge}</source>
        <translation>rechtwinklig zu {edge}</translation>
    </message>
    <message>
        <source>stands in the bore of {part}, and goes where that goes</source>
        <translation>sitzt in der Bohrung von {part} und geht mit ihr mit</translation>
    </message>
    <message>
        <source>stands off</source>
        <translation>liegt hohl</translation>
    </message>
    <message>
        <source>stands off {gap}</source>
        <translation>liegt {gap} hohl</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>start</source>
        <comment>field of a record</comment>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>start_x_mm</source>
        <comment>column</comment>
        <translation>beginn_x_mm</translation>
    </message>
    <message>
        <source>start_y_mm</source>
        <comment>column</comment>
        <translation>beginn_y_mm</translation>
    </message>
    <message>
        <source>start_z_mm</source>
        <comment>column</comment>
        <translation>beginn_z_mm</translation>
    </message>
    <message>
        <source>stays in the finished head, and is plugged at the end</source>
        <translation>bleibt in der fertigen Kopfplatte und wird am Ende verschlossen</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>step</source>
        <comment>column</comment>
        <translation>schritt</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>steps of the running order</source>
        <translation>Schritte der Arbeitsfolge</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Bohrtiefe</translation>
    </message>
    <message>
        <source>stop</source>
        <comment>the clock</comment>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>stop depth</source>
        <translation>Bohrtiefe</translation>
    </message>
    <message>
        <source>stop {stop}</source>
        <translation>Tiefe {stop}</translation>
    </message>
    <message>
        <source>stop {stop}, {point} to the point</source>
        <translation>Bohrtiefe {stop}, bis zur Spitze {point}</translation>
    </message>
    <message>
        <source>stop_mm</source>
        <comment>column</comment>
        <translation>bohrtiefe_mm</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>straight on</source>
        <translation>geradeaus</translation>
    </message>
    <message>
        <source>string</source>
        <translation>Saite</translation>
    </message>
    <message>
        <source>string</source>
        <comment>field of a record</comment>
        <translation>Saite</translation>
    </message>
    <message>
        <source>string</source>
        <comment>name of a feature</comment>
        <translation>Saite</translation>
    </message>
    <message>
        <source>string hole</source>
        <comment>field of a record</comment>
        <translation>Saitenloch</translation>
    </message>
    <message>
        <source>string retainer</source>
        <translation>Saitenniederhalter</translation>
    </message>
    <message>
        <source>string to post, wall and ramp</source>
        <comment>field of a record</comment>
        <translation>Saite zu Welle, Wand und Rampe</translation>
    </message>
    <message>
        <source>strings</source>
        <translation>Saiten</translation>
    </message>
    <message>
        <source>strings of a course</source>
        <comment>field of a record</comment>
        <translation>Saiten eines Chors</translation>
    </message>
    <message>
        <source>surface</source>
        <comment>column</comment>
        <translation>seite</translation>
    </message>
    <message>
        <source>table</source>
        <comment>column</comment>
        <translation>tisch</translation>
    </message>
    <message>
        <source>table level</source>
        <translation>Tisch waagrecht</translation>
    </message>
    <message>
        <source>table level, {fence}</source>
        <translation>Tisch waagrecht, {fence}</translation>
    </message>
    <message>
        <source>table tilt</source>
        <comment>field of a record</comment>
        <translation>Tischneigung</translation>
    </message>
    <message>
        <source>table tilt of side bores</source>
        <translation>Tischneigung der Seitenbohrungen</translation>
    </message>
    <message>
        <source>table tilted {tilt} ({blocks} of blocks over {base}), {end} end raised, {fence}</source>
        <translation>Tisch um {tilt} geneigt ({blocks} Klötze auf {base}), Ende angehoben: {end}, {fence}</translation>
    </message>
    <message>
        <source>taper</source>
        <comment>field of a record</comment>
        <translation>Verjüngung</translation>
    </message>
    <message>
        <source>taper_one_to</source>
        <comment>column</comment>
        <translation>verjuengung_eins_zu</translation>
    </message>
    <message>
        <source>template</source>
        <translation>Schablone</translation>
    </message>
    <message>
        <source>template</source>
        <comment>term</comment>
        <translation>Schablone</translation>
    </message>
    <message>
        <source>template and following</source>
        <translation>Schablone und Führung</translation>
    </message>
    <message>
        <source>template below</source>
        <comment>term</comment>
        <translation>Schablone darunter</translation>
    </message>
    <message>
        <source>template board</source>
        <translation>Schablonenbrett</translation>
    </message>
    <message>
        <source>template board for the outline</source>
        <translation>Schablonenbrett für den Umriss</translation>
    </message>
    <message>
        <source>template laid on the marks</source>
        <translation>Schablone auf den Anrissen</translation>
    </message>
    <message>
        <source>template on its pin, turned to the marks</source>
        <translation>Schablone auf ihrem Passstift, nach den Anrissen ausgerichtet</translation>
    </message>
    <message>
        <source>template on its pins</source>
        <translation>Schablone auf ihren Stiften</translation>
    </message>
    <message>
        <source>template {wide}</source>
        <translation>Schablone {wide}</translation>
    </message>
    <message>
        <source>template, wrap paper and back paper as DXF and SVG, tables as CSV</source>
        <translation>Schablone, Hüllbogen und Rückbogen als DXF und SVG, Tabellen als CSV</translation>
    </message>
    <message>
        <source>the bass end of the nut</source>
        <translation>das Bassende des Sattels</translation>
    </message>
    <message>
        <source>the best order</source>
        <translation>die beste Folge</translation>
    </message>
    <message>
        <source>the best with what is done</source>
        <translation>die beste mit dem Erledigten</translation>
    </message>
    <message>
        <source>the bore</source>
        <translation>die Bohrung</translation>
    </message>
    <message>
        <source>the bore meets no slot</source>
        <translation>die Bohrung trifft keinen Schlitz</translation>
    </message>
    <message>
        <source>the centre of the {operation}</source>
        <translation>die Mitte: {operation}</translation>
    </message>
    <message>
        <source>the centreline, {along} along</source>
        <translation>der Mittellinie, {along} längs</translation>
    </message>
    <message>
        <source>the cutter and its line</source>
        <translation>den Fräser und seine Linie</translation>
    </message>
    <message>
        <source>the disk can only be read</source>
        <translation>der Datenträger ist nur lesbar</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>the disk refuses it</source>
        <translation>der Datenträger verweigert es</translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation>der Datenträger meldet einen Fehler</translation>
    </message>
    <message>
        <source>the drill's wander in {what}</source>
        <translation>das Verlaufen des Bohrers bei {what}</translation>
    </message>
    <message>
        <source>the drive does not answer</source>
        <translation>das Laufwerk antwortet nicht</translation>
    </message>
    <message>
        <source>the edge of the template</source>
        <translation>Rand der Schablone</translation>
    </message>
    <message>
        <source>the face</source>
        <translation>der Vorderseite</translation>
    </message>
    <message>
        <source>the face beside {feature}</source>
        <translation>die Vorderseite neben {feature}</translation>
    </message>
    <message>
        <source>the file</source>
        <translation>die Datei</translation>
    </message>
    <message>
        <source>the file is protected against writing</source>
        <translation>die Datei ist schreibgeschützt</translation>
    </message>
    <message>
        <source>the file would be larger than that disk allows</source>
        <translation>die Datei wäre größer, als der Datenträger erlaubt</translation>
    </message>
    <message>
        <source>the finish</source>
        <translation>den Lack</translation>
    </message>
    <message>
        <source>the finished edge</source>
        <translation>die fertige Kante</translation>
    </message>
    <message>
        <source>the first end</source>
        <translation>das erste Ende</translation>
    </message>
    <message>
        <source>the first node: closes the line</source>
        <translation>der erste Knoten: schließt die Linie</translation>
    </message>
    <message>
        <source>the fit of the peg</source>
        <translation>der Sitz des Wirbels</translation>
    </message>
    <message>
        <source>the fit of the template on its pins</source>
        <translation>den Sitz der Schablone auf ihren Stiften</translation>
    </message>
    <message>
        <source>the fit of {tuner}</source>
        <translation>den Sitz von {tuner}</translation>
    </message>
    <message>
        <source>the glue line of {ear}</source>
        <translation>die Leimfuge von {ear}</translation>
    </message>
    <message>
        <source>the head piece</source>
        <translation>das Kopfstück</translation>
    </message>
    <message>
        <source>the hole</source>
        <translation>das Loch</translation>
    </message>
    <message>
        <source>the hole of {pin}</source>
        <translation>das Loch von {pin}</translation>
    </message>
    <message>
        <source>the layout</source>
        <translation>der Entwurf</translation>
    </message>
    <message>
        <source>the mark of the ramp of {slot}</source>
        <translation>der Anriss der Rampe von {slot}</translation>
    </message>
    <message>
        <source>the mark of {what}</source>
        <translation>der Anriss von {what}</translation>
    </message>
    <message>
        <source>the middle of string {name}</source>
        <translation>die Mitte der Saite {name}</translation>
    </message>
    <message>
        <source>the name leads round in a circle</source>
        <translation>der Name führt im Kreis herum</translation>
    </message>
    <message>
        <source>the nut end of {opening}</source>
        <translation>Sattelende von {opening}</translation>
    </message>
    <message>
        <source>the nut's</source>
        <translation>die des Sattels</translation>
    </message>
    <message>
        <source>the outline</source>
        <translation>der Umriss</translation>
    </message>
    <message>
        <source>the outline</source>
        <comment>what is routed</comment>
        <translation>den Umriss</translation>
    </message>
    <message>
        <source>the pattern asks for {kind}</source>
        <translation>das Bohrbild verlangt {kind}</translation>
    </message>
    <message>
        <source>the picture</source>
        <translation>das Bild</translation>
    </message>
    <message>
        <source>the pin holes</source>
        <translation>die Stiftlöcher</translation>
    </message>
    <message>
        <source>the place of the plate of {tuner}</source>
        <translation>den Platz der Platte von {tuner}</translation>
    </message>
    <message>
        <source>the place of the template</source>
        <translation>der Platz der Schablone</translation>
    </message>
    <message>
        <source>the place of {feature}</source>
        <translation>die Lage von {feature}</translation>
    </message>
    <message>
        <source>the pricked centres</source>
        <translation>die angekörnten Mitten</translation>
    </message>
    <message>
        <source>the printer</source>
        <translation>den Drucker</translation>
    </message>
    <message>
        <source>the rails beside {feature}</source>
        <translation>die Wangen neben {feature}</translation>
    </message>
    <message>
        <source>the ramp of {opening}</source>
        <translation>Rampe von {opening}</translation>
    </message>
    <message>
        <source>the reamed hole</source>
        <translation>das aufgeriebene Loch</translation>
    </message>
    <message>
        <source>the router plunges {plunge} and the template takes {template} of that</source>
        <translation>der Hub der Oberfräse ist {plunge}, und die Schablone nimmt davon {template}</translation>
    </message>
    <message>
        <source>the sanded surfaces</source>
        <translation>die geschliffenen Flächen</translation>
    </message>
    <message>
        <source>the seat of {feature}</source>
        <translation>den Sitz von {feature}</translation>
    </message>
    <message>
        <source>the square edge of {feature}</source>
        <translation>die gerade Kante von {feature}</translation>
    </message>
    <message>
        <source>the square {edge}</source>
        <translation>die gerade Kante: {edge}</translation>
    </message>
    <message>
        <source>the stop depth of {what}</source>
        <translation>die Bohrtiefe von {what}</translation>
    </message>
    <message>
        <source>the stretch of the {paper}</source>
        <translation>die Dehnung: {paper}</translation>
    </message>
    <message>
        <source>the system refuses that name</source>
        <translation>das System verweigert diesen Namen</translation>
    </message>
    <message>
        <source>the template</source>
        <translation>die Schablone</translation>
    </message>
    <message>
        <source>the tilt of {what}</source>
        <translation>die Neigung von {what}</translation>
    </message>
    <message>
        <source>the treble end of the nut</source>
        <translation>das Diskantende des Sattels</translation>
    </message>
    <message>
        <source>the veneer</source>
        <translation>das Furnier</translation>
    </message>
    <message>
        <source>the wall already cut</source>
        <translation>die schon geschnittene Wand</translation>
    </message>
    <message>
        <source>the wall already cut guides</source>
        <translation>die schon geschnittene Wand führt</translation>
    </message>
    <message>
        <source>the wall of {slot}</source>
        <translation>die Wand von {slot}</translation>
    </message>
    <message>
        <source>the whole head</source>
        <translation>die ganze Kopfplatte</translation>
    </message>
    <message>
        <source>the wood between {feature} and the outline</source>
        <translation>das Holz zwischen {feature} und dem Umriss</translation>
    </message>
    <message>
        <source>the wood between {feature} and {slot}</source>
        <translation>das Holz zwischen {feature} und {slot}</translation>
    </message>
    <message>
        <source>there is a folder or a device of that name</source>
        <translation>dort ist ein Ordner oder Gerät dieses Namens</translation>
    </message>
    <message>
        <source>they meet in the wood</source>
        <translation>sie treffen sich im Holz</translation>
    </message>
    <message>
        <source>thick</source>
        <translation>dick</translation>
    </message>
    <message>
        <source>thickest head</source>
        <comment>field of a record</comment>
        <translation>dickste Kopfplatte</translation>
    </message>
    <message>
        <source>thickness</source>
        <comment>term</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>thickness of the blank</source>
        <translation>Dicke des Rohlings</translation>
    </message>
    <message>
        <source>thickness_mm</source>
        <comment>column</comment>
        <translation>dicke_mm</translation>
    </message>
    <message>
        <source>thin {chance}</source>
        <translation>dünn {chance}</translation>
    </message>
    <message>
        <source>thinnest head</source>
        <comment>field of a record</comment>
        <translation>dünnste Kopfplatte</translation>
    </message>
    <message>
        <source>this point</source>
        <translation>dieser Punkt</translation>
    </message>
    <message>
        <source>throat</source>
        <comment>field of a record</comment>
        <translation>Ausladung</translation>
    </message>
    <message>
        <source>through</source>
        <translation>durchgehend</translation>
    </message>
    <message>
        <source>through</source>
        <comment>column</comment>
        <translation>durchgehend</translation>
    </message>
    <message>
        <source>through</source>
        <comment>in a narrow column</comment>
        <translation>durch</translation>
    </message>
    <message>
        <source>through the face</source>
        <translation>durch die Vorderseite</translation>
    </message>
    <message>
        <source>through the side</source>
        <translation>durch die Seite</translation>
    </message>
    <message>
        <source>through the {mount}; {bores}; post {diameter}, {length} above the face, string hole at {string_hole}; seat {before} x {across}; {button}</source>
        <translation>durch die {mount}; {bores}; Welle {diameter}, {length} über der Vorderseite, Saitenloch bei {string_hole}; Sitz {before} x {across}; {button}</translation>
    </message>
    <message>
        <source>through the {mount}; {bores}; post {diameter}, {length} from the plate, string hole at {string_hole}; seat {before} x {across}; {button}</source>
        <translation>durch die {mount}; {bores}; Welle {diameter}, {length} ab der Platte, Saitenloch bei {string_hole}; Sitz {before} x {across}; {button}</translation>
    </message>
    <message>
        <source>through the {mount}; {bores}; post {diameter}, {length} long, string hole at {string_hole}; seat {before} x {across}; {button}</source>
        <translation>durch die {mount}; {bores}; Welle {diameter}, {length} lang, Saitenloch bei {string_hole}; Sitz {before} x {across}; {button}</translation>
    </message>
    <message>
        <source>through, is there</source>
        <translation>durchgehend, vorhanden</translation>
    </message>
    <message>
        <source>through, on a spoil board</source>
        <translation>durchgehend, auf einem Opferbrett</translation>
    </message>
    <message>
        <source>through, {stop} with the point</source>
        <translation>durchgehend, {stop} mit der Spitze</translation>
    </message>
    <message>
        <source>tight</source>
        <comment>term</comment>
        <translation>knapp</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>tilt</source>
        <comment>field of a record</comment>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>tilt_degrees</source>
        <comment>column</comment>
        <translation>neigung_grad</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>timed, and no longer in the order</source>
        <translation>gestoppt, aber nicht mehr in der Folge</translation>
    </message>
    <message>
        <source>tip</source>
        <comment>of a bit</comment>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>tip</source>
        <comment>term</comment>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>tip end</source>
        <comment>term</comment>
        <translation>Spitzenende</translation>
    </message>
    <message>
        <source>tip pin</source>
        <comment>name of a feature</comment>
        <translation>Spitzenstift</translation>
    </message>
    <message>
        <source>title</source>
        <comment>column</comment>
        <translation>titel</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>to full diameter</source>
        <translation>bis zum vollen Durchmesser</translation>
    </message>
    <message>
        <source>to point</source>
        <translation>bis Spitze</translation>
    </message>
    <message>
        <source>to the bass</source>
        <translation>zum Bass</translation>
    </message>
    <message>
        <source>to the edge</source>
        <translation>zur Kante</translation>
    </message>
    <message>
        <source>to the one before</source>
        <translation>zur vorigen</translation>
    </message>
    <message>
        <source>to the point</source>
        <translation>bis zur Spitze</translation>
    </message>
    <message>
        <source>to the treble</source>
        <translation>zum Diskant</translation>
    </message>
    <message>
        <source>to x {x} mm</source>
        <translation>bis x {x} mm</translation>
    </message>
    <message>
        <source>to {z} mm below the face</source>
        <translation>bis {z} mm unter die Vorderseite</translation>
    </message>
    <message>
        <source>together</source>
        <translation>zusammen</translation>
    </message>
    <message>
        <source>together, {piece}</source>
        <translation>zusammen, {piece}</translation>
    </message>
    <message>
        <source>too fat</source>
        <translation>zu dick</translation>
    </message>
    <message>
        <source>too short</source>
        <translation>zu kurz</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>total</source>
        <comment>column</comment>
        <translation>summe</translation>
    </message>
    <message>
        <source>touching {edge}</source>
        <translation>berührt {edge}</translation>
    </message>
    <message>
        <source>treble</source>
        <translation>Disk.</translation>
    </message>
    <message>
        <source>treble</source>
        <comment>field of a record</comment>
        <translation>Diskantkante</translation>
    </message>
    <message>
        <source>treble</source>
        <comment>name of a feature</comment>
        <translation>Diskantseite</translation>
    </message>
    <message>
        <source>treble</source>
        <comment>term</comment>
        <translation>Diskant</translation>
    </message>
    <message>
        <source>treble ear</source>
        <comment>name of a feature</comment>
        <translation>Diskantohr</translation>
    </message>
    <message>
        <source>treble edge</source>
        <comment>term</comment>
        <translation>Diskantkante</translation>
    </message>
    <message>
        <source>treble edge of the blank</source>
        <translation>Diskantkante des Rohlings</translation>
    </message>
    <message>
        <source>treble edge up</source>
        <translation>Disk. oben</translation>
    </message>
    <message>
        <source>treble end</source>
        <translation>Diskantende</translation>
    </message>
    <message>
        <source>treble end of the nut</source>
        <translation>Diskantende des Sattels</translation>
    </message>
    <message>
        <source>treble face</source>
        <comment>name of a feature</comment>
        <translation>Diskantseite vorn</translation>
    </message>
    <message>
        <source>treble face row</source>
        <comment>name of a feature</comment>
        <translation>Diskantreihe vorn</translation>
    </message>
    <message>
        <source>treble row</source>
        <comment>name of a feature</comment>
        <translation>Diskantreihe</translation>
    </message>
    <message>
        <source>treble side</source>
        <translation>Diskantseite</translation>
    </message>
    <message>
        <source>treble side</source>
        <comment>name of a feature</comment>
        <translation>Diskantseite quer</translation>
    </message>
    <message>
        <source>treble side row</source>
        <comment>name of a feature</comment>
        <translation>Diskantreihe quer</translation>
    </message>
    <message>
        <source>treble slot</source>
        <comment>name of a feature</comment>
        <translation>Diskantschlitz</translation>
    </message>
    <message>
        <source>truss rod pocket</source>
        <comment>name of a feature</comment>
        <translation>Halsstabtasche</translation>
    </message>
    <message>
        <source>tuned to</source>
        <translation>gestimmt auf</translation>
    </message>
    <message>
        <source>tuner</source>
        <comment>field of a record</comment>
        <translation>Mechanik</translation>
    </message>
    <message>
        <source>tuner: {pattern}</source>
        <translation>Mechanik: {pattern}</translation>
    </message>
    <message>
        <source>tuners</source>
        <comment>term</comment>
        <translation>Mechaniken</translation>
    </message>
    <message>
        <source>tuners on the bass side</source>
        <translation>Mechaniken auf der Bassseite</translation>
    </message>
    <message>
        <source>tuners on the treble side</source>
        <translation>Mechaniken auf der Diskantseite</translation>
    </message>
    <message>
        <source>tuners through the face</source>
        <translation>Mechaniken durch die Vorderseite</translation>
    </message>
    <message>
        <source>tuners through the side</source>
        <translation>Mechaniken durch die Seite</translation>
    </message>
    <message>
        <source>turn</source>
        <comment>field of a record</comment>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>turn the template over</source>
        <translation>die Schablone wenden</translation>
    </message>
    <message>
        <source>twice</source>
        <comment>term</comment>
        <translation>doppelt</translation>
    </message>
    <message>
        <source>twice full size</source>
        <translation>doppelte Größe</translation>
    </message>
    <message>
        <source>twist</source>
        <comment>term</comment>
        <translation>Spiralbohrer</translation>
    </message>
    <message>
        <source>twist drill</source>
        <translation>Spiralbohrer</translation>
    </message>
    <message>
        <source>twist {size}</source>
        <comment>name of a feature</comment>
        <translation>Spiralbohrer {size}</translation>
    </message>
    <message>
        <source>twist {size} in</source>
        <comment>name of a feature</comment>
        <translation>Spiralbohrer {size} Zoll</translation>
    </message>
    <message>
        <source>under</source>
        <translation>unter</translation>
    </message>
    <message>
        <source>under 1 in {n:,}</source>
        <translation>unter 1 von {n:,}</translation>
    </message>
    <message>
        <source>under the post</source>
        <translation>unter die Welle</translation>
    </message>
    <message>
        <source>under the retainer on {hole}</source>
        <translation>unter dem Niederhalter auf {hole}</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>unit</source>
        <comment>column</comment>
        <translation>einheit</translation>
    </message>
    <message>
        <source>unsafe</source>
        <comment>term</comment>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>unwise</source>
        <comment>term</comment>
        <translation>unklug</translation>
    </message>
    <message>
        <source>up to {depth}</source>
        <translation>bis {depth}</translation>
    </message>
    <message>
        <source>up to {turns:,.0f} turns a minute</source>
        <translation>bis {turns:,.0f} Umdrehungen je Minute</translation>
    </message>
    <message>
        <source>upright</source>
        <comment>term</comment>
        <translation>stehende</translation>
    </message>
    <message>
        <source>upright over its node</source>
        <translation>senkrecht über seinem Knoten</translation>
    </message>
    <message>
        <source>use thinner pins</source>
        <translation>dünnere Stifte nehmen</translation>
    </message>
    <message>
        <source>use thinner pins, or cut the template from a board as large as the blank and let them stand in the waste</source>
        <translation>dünnere Stifte nehmen oder die Schablone aus einem Brett so groß wie der Rohling schneiden und sie im Abfall stehen lassen</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>usual for its diameter</source>
        <translation>üblich für seinen Durchmesser</translation>
    </message>
    <message>
        <source>value</source>
        <comment>column</comment>
        <translation>wert</translation>
    </message>
    <message>
        <source>value</source>
        <comment>field of a record</comment>
        <translation>Wert</translation>
    </message>
    <message>
        <source>wall already cut</source>
        <comment>term</comment>
        <translation>schon geschnittene Wand</translation>
    </message>
    <message>
        <source>wall of {slot}</source>
        <translation>Wand von {slot}</translation>
    </message>
    <message>
        <source>wall of {slot}, which is there already</source>
        <translation>Wand von {slot}, schon vorhanden</translation>
    </message>
    <message>
        <source>was not there</source>
        <translation>war nicht da</translation>
    </message>
    <message>
        <source>waste</source>
        <comment>term</comment>
        <translation>Abfall</translation>
    </message>
    <message>
        <source>waste holes</source>
        <comment>term</comment>
        <translation>Räumbohrungen</translation>
    </message>
    <message>
        <source>waste sawn out</source>
        <translation>Abfall ausgesägt</translation>
    </message>
    <message>
        <source>web</source>
        <translation>Steg</translation>
    </message>
    <message>
        <source>web</source>
        <comment>term</comment>
        <translation>Steg</translation>
    </message>
    <message>
        <source>what arrived there is not what was written</source>
        <translation>was dort angekommen ist, ist nicht das, was geschrieben wurde</translation>
    </message>
    <message>
        <source>what fits</source>
        <translation>was passt</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>width</source>
        <comment>term</comment>
        <translation>Breite</translation>
    </message>
    <message>
        <source>width of the blank</source>
        <translation>Breite des Rohlings</translation>
    </message>
    <message>
        <source>width of the nut</source>
        <translation>Breite des Sattels</translation>
    </message>
    <message>
        <source>width_mm</source>
        <comment>column</comment>
        <translation>breite_mm</translation>
    </message>
    <message>
        <source>winding</source>
        <comment>field of a record</comment>
        <translation>Windung</translation>
    </message>
    <message>
        <source>with a screw for a pilot of {diameter}; width and strings above the face: {sizes}</source>
        <translation>mit Schraube für eine Vorbohrung von {diameter}; Breite und Saiten über der Vorderseite: {sizes}</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>wood</source>
        <comment>term</comment>
        <translation>Holz</translation>
    </message>
    <message>
        <source>wood above and below a side bore</source>
        <comment>field of a record</comment>
        <translation>Holz über und unter Seitenbohrung</translation>
    </message>
    <message>
        <source>wood screw</source>
        <translation>Holzschraube</translation>
    </message>
    <message>
        <source>words</source>
        <comment>column</comment>
        <translation>worte</translation>
    </message>
    <message>
        <source>work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>wrap paper</source>
        <comment>term</comment>
        <translation>Hüllbogen</translation>
    </message>
    <message>
        <source>written</source>
        <translation>geschrieben</translation>
    </message>
    <message>
        <source>wrong here</source>
        <translation>hier falsch</translation>
    </message>
    <message>
        <source>x from the bass edge of the blank</source>
        <translation>x von der Basskante des Rohlings</translation>
    </message>
    <message>
        <source>x from the centreline</source>
        <translation>x von der Mittellinie</translation>
    </message>
    <message>
        <source>x from the treble edge of the blank</source>
        <translation>x von der Diskantkante des Rohlings</translation>
    </message>
    <message>
        <source>x {x0} mm to {x1} mm, y {y0} mm to {y1} mm</source>
        <translation>x {x0} mm bis {x1} mm, y {y0} mm bis {y1} mm</translation>
    </message>
    <message>
        <source>x, below face</source>
        <translation>x, ab Vorderseite</translation>
    </message>
    <message>
        <source>y from the nut line</source>
        <translation>y von der Sattellinie</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>you have no right to read it</source>
        <translation>Sie haben kein Leserecht</translation>
    </message>
    <message>
        <source>you have no right to write there</source>
        <translation>Sie haben dort kein Schreibrecht</translation>
    </message>
    <message>
        <source>your own order</source>
        <translation>Ihre eigene Folge</translation>
    </message>
    <message>
        <source>your share of the disk is used up</source>
        <translation>Ihr Anteil am Datenträger ist aufgebraucht</translation>
    </message>
    <message>
        <source>{across} across to the bass, {along} along</source>
        <translation>{across} quer zum Bass, {along} längs</translation>
    </message>
    <message>
        <source>{across} across to the treble, {along} along</source>
        <translation>{across} quer zum Diskant, {along} längs</translation>
    </message>
    <message>
        <source>{across} to the bass side, {along}</source>
        <translation>{across} zur Bassseite, {along}</translation>
    </message>
    <message>
        <source>{across} to the treble side, {along}</source>
        <translation>{across} zur Diskantseite, {along}</translation>
    </message>
    <message>
        <source>{across}, on the {line}</source>
        <translation>{across}, auf der {line}</translation>
    </message>
    <message>
        <source>{across}, {along} behind the {line}</source>
        <translation>{across}, {along} hinter der {line}</translation>
    </message>
    <message>
        <source>{across}, {along} from the {line}</source>
        <translation>{across}, {along} von der {line}</translation>
    </message>
    <message>
        <source>{along} behind the {line}</source>
        <translation>{along} hinter der {line}</translation>
    </message>
    <message>
        <source>{along} from the {line}</source>
        <translation>{along} von der {line}</translation>
    </message>
    <message>
        <source>{angle:.1f} degrees</source>
        <translation>{angle:.1f} Grad</translation>
    </message>
    <message>
        <source>{apart} apart{bores}, {why}</source>
        <translation>{apart} auseinander{bores}, {why}</translation>
    </message>
    <message>
        <source>{apart} apart{bores}, {why}: the template turns over on them</source>
        <translation>{apart} auseinander{bores}, {why}: die Schablone wird gewendet</translation>
    </message>
    <message>
        <source>{area} in {n} place, up to {depth} deep</source>
        <translation>{area} an {n} Stelle, bis {depth} tief</translation>
    </message>
    <message>
        <source>{area} in {n} places, up to {depth} deep</source>
        <translation>{area} an {n} Stellen, bis {depth} tief</translation>
    </message>
    <message>
        <source>{at} keeps {area} mm² of wood in corners tighter than the {cutter} mm cutter, up to {depth} mm deep.</source>
        <translation>{at}: in Ecken, die enger sind als der Fräser mit {cutter} mm, bleiben {area} mm² Holz stehen, bis {depth} mm tief.</translation>
    </message>
    <message>
        <source>{at} of {of}</source>
        <translation>{at} von {of}</translation>
    </message>
    <message>
        <source>{away} behind the {line}</source>
        <translation>{away} hinter der {line}</translation>
    </message>
    <message>
        <source>{away} from the {line}</source>
        <translation>{away} von der {line}</translation>
    </message>
    <message>
        <source>{a} mm from the {name} to the feather edge of the scarf joint, {b} mm wanted.</source>
        <translation>{name}: {a} mm bis zur auslaufenden Kante der Schäftung, {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{bits} then {bit}</source>
        <translation>{bits}, dann {bit}</translation>
    </message>
    <message>
        <source>{bit} does not do {opening}: {reason}</source>
        <translation>{bit} schafft {opening} nicht: {reason}</translation>
    </message>
    <message>
        <source>{bit} does {opening} only from both sides: it is not guided at every depth from the face.</source>
        <translation>{bit} schafft {opening} nur von beiden Seiten: von der Vorderseite ist er nicht in jeder Tiefe geführt.</translation>
    </message>
    <message>
        <source>{bit} in {bush}</source>
        <translation>{bit} in {bush}</translation>
    </message>
    <message>
        <source>{bit} reaches {a} of {b} mm in {opening}.</source>
        <translation>{bit} reicht {a} von {b} mm tief in {opening}.</translation>
    </message>
    <message>
        <source>{bit} standing {out} below the router's base</source>
        <translation>{bit}, der {out} unter die Fußplatte reicht,</translation>
    </message>
    <message>
        <source>{bit} with a bearing {high} high</source>
        <translation>{bit} mit {high} hohem Anlaufring</translation>
    </message>
    <message>
        <source>{bit} with a cutting length of {length}</source>
        <translation>{bit} mit {length} langen Schneiden</translation>
    </message>
    <message>
        <source>{bit} with a cutting length of {length}, standing {stick_out} below the router's base, would, {done}.</source>
        <translation>{bit} mit {length} langen Schneiden, der {stick_out} unter die Fußplatte reicht, ginge, {done}.</translation>
    </message>
    <message>
        <source>{bit} with a shank of {shank}</source>
        <translation>{bit} mit {shank} Schaft</translation>
    </message>
    <message>
        <source>{bit} with {bush}</source>
        <translation>{bit} mit {bush}</translation>
    </message>
    <message>
        <source>{bit} would, {done}.</source>
        <translation>{bit} ginge, {done}.</translation>
    </message>
    <message>
        <source>{bit}, {stop}</source>
        <translation>{bit}, {stop}</translation>
    </message>
    <message>
        <source>{bit}: at most {most:,.0f} turns a minute ({source}), and the router's slowest setting is {slowest:,.0f}: do not run it in this router.</source>
        <translation>{bit}: höchstens {most:,.0f} Umdrehungen je Minute ({source}); die langsamste Stufe der Oberfräse ist {slowest:,.0f}: nicht in dieser Oberfräse laufen lassen.</translation>
    </message>
    <message>
        <source>{bit}: at most {most:,.0f} turns a minute ({source}).</source>
        <translation>{bit}: höchstens {most:,.0f} Umdrehungen je Minute ({source}).</translation>
    </message>
    <message>
        <source>{bit}: set {setting:,.0f} turns a minute, rim speed {rim_speed}; at most {most:,.0f} ({source}).</source>
        <translation>{bit}: {setting:,.0f} Umdrehungen je Minute einstellen, Schnittgeschwindigkeit {rim_speed}; höchstens {most:,.0f} ({source}).</translation>
    </message>
    <message>
        <source>{block} over {base}</source>
        <translation>{block} auf {base}</translation>
    </message>
    <message>
        <source>{board}: opening the same size as the finished slot.</source>
        <translation>{board}: Öffnung so groß wie der fertige Schlitz.</translation>
    </message>
    <message>
        <source>{board}: opening {by} larger all round than the finished slot.</source>
        <translation>{board}: Öffnung ringsum {by} größer als der fertige Schlitz.</translation>
    </message>
    <message>
        <source>{board}: opening {by} smaller all round than the finished slot.</source>
        <translation>{board}: Öffnung ringsum {by} kleiner als der fertige Schlitz.</translation>
    </message>
    <message>
        <source>{board}: outside template the same size as the finished outline.</source>
        <translation>{board}: Außenschablone so groß wie der fertige Umriss.</translation>
    </message>
    <message>
        <source>{board}: outside template {by} larger all round than the finished outline.</source>
        <translation>{board}: Außenschablone ringsum {by} größer als der fertige Umriss.</translation>
    </message>
    <message>
        <source>{board}: outside template {by} larger than the finished outline, cut off at the nut line.</source>
        <translation>{board}: Außenschablone {by} größer als der fertige Umriss, an der Sattellinie abgeschnitten.</translation>
    </message>
    <message>
        <source>{board}: outside template {by} smaller all round than the finished outline.</source>
        <translation>{board}: Außenschablone ringsum {by} kleiner als der fertige Umriss.</translation>
    </message>
    <message>
        <source>{board}: outside template {by} smaller than the finished outline down to the nut line.</source>
        <translation>{board}: Außenschablone bis zur Sattellinie {by} kleiner als der fertige Umriss.</translation>
    </message>
    <message>
        <source>{bush} stands {length} out of the base, more than the {template} template is thick, so the base would not sit down: take a thicker template.</source>
        <translation>{bush} steht {length} aus der Fußplatte vor, mehr als die Schablone von {template} dick ist; die Fußplatte säße nicht auf: eine dickere Schablone nehmen.</translation>
    </message>
    <message>
        <source>{by} a slip?</source>
        <translation>{by} ein Schreibfehler?</translation>
    </message>
    <message>
        <source>{by} narrower than the {diameter} asked for</source>
        <translation>um {by} enger als die verlangten {diameter}</translation>
    </message>
    <message>
        <source>{by} to the bass side</source>
        <translation>{by} zur Bassseite</translation>
    </message>
    <message>
        <source>{by} to the nut</source>
        <translation>{by} zum Sattel</translation>
    </message>
    <message>
        <source>{by} to the tip</source>
        <translation>{by} zur Spitze</translation>
    </message>
    <message>
        <source>{by} to the treble side</source>
        <translation>{by} zur Diskantseite</translation>
    </message>
    <message>
        <source>{by} wider than the {diameter} asked for</source>
        <translation>um {by} weiter als die verlangten {diameter}</translation>
    </message>
    <message>
        <source>{called} breaks out of the outline by {measured} mm.</source>
        <translation>{called}: bricht {measured} mm aus dem Umriss aus.</translation>
    </message>
    <message>
        <source>{called} breaks out of the outline by {measured} mm; {needed} mm of wood wanted.</source>
        <translation>{called}: bricht {measured} mm aus dem Umriss aus; {needed} mm Holz gewünscht.</translation>
    </message>
    <message>
        <source>{called} comes within {a} mm of the outline beyond its own mouth; {b} mm wanted.</source>
        <translation>{called}: kommt jenseits der eigenen Mündung auf {a} mm an den Umriss; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{called} is cut by the outline: put it at least {needed} mm inside or outside it.</source>
        <translation>{called}: wird vom Umriss angeschnitten; mindestens {needed} mm nach innen oder außen setzen.</translation>
    </message>
    <message>
        <source>{called} leaves {a} mm of wood to the outline; {b} mm wanted.</source>
        <translation>{called}: nur {a} mm Holz bis zum Umriss; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{called} lies outside the outline, {inside} mm from it to the middle.</source>
        <translation>{called}: liegt außerhalb des Umrisses, {inside} mm bis zur Mitte.</translation>
    </message>
    <message>
        <source>{card}, done</source>
        <translation>{card}, erledigt</translation>
    </message>
    <message>
        <source>{cause} ({share:.0f} %)</source>
        <translation>{cause} ({share:.0f} %)</translation>
    </message>
    <message>
        <source>{chance} (all of {trials:,} tried)</source>
        <translation>{chance} (alle {trials:,} Versuche)</translation>
    </message>
    <message>
        <source>{chance} (none of {trials:,} tried)</source>
        <translation>{chance} (keiner von {trials:,} Versuchen)</translation>
    </message>
    <message>
        <source>{chance} (none seen in {trials:,})</source>
        <translation>{chance} (keiner gesehen in {trials:,})</translation>
    </message>
    <message>
        <source>{changes} changes of machine, bit, table or side: no order needs fewer</source>
        <translation>{changes} Wechsel von Maschine, Werkzeug, Tisch oder Seite: keine Folge braucht weniger</translation>
    </message>
    <message>
        <source>{changes} changes of machine, bit, table or side; none can do with fewer than {bound}</source>
        <translation>{changes} Wechsel von Maschine, Werkzeug, Tisch oder Seite; weniger als {bound} gehen nicht</translation>
    </message>
    <message>
        <source>{changes} changes of machine, bit, table or side; the best order has {total}</source>
        <translation>{changes} Wechsel von Maschine, Werkzeug, Tisch oder Seite; die beste Folge hat {total}</translation>
    </message>
    <message>
        <source>{core}; planed to this before the veneers, {whole} with them</source>
        <translation>{core}; vor den Furnieren so dick gehobelt, mit ihnen {whole}</translation>
    </message>
    <message>
        <source>{core}; there already: {names}</source>
        <translation>{core}; schon vorhanden: {names}</translation>
    </message>
    <message>
        <source>{cutter} shank-bearing bit</source>
        <translation>Fräser mit {cutter} und Anlaufring am Schaft</translation>
    </message>
    <message>
        <source>{cutter} straight bit</source>
        <translation>Nutfräser mit {cutter}</translation>
    </message>
    <message>
        <source>{cutter} tip-bearing bit</source>
        <translation>Fräser mit {cutter} und Anlaufring an der Spitze</translation>
    </message>
    <message>
        <source>{deep} deep in the inner wall</source>
        <translation>{deep} tief in der Innenwand</translation>
    </message>
    <message>
        <source>{depth} deep</source>
        <translation>{depth} tief</translation>
    </message>
    <message>
        <source>{depth} deep, is there</source>
        <translation>{depth} tief, vorhanden</translation>
    </message>
    <message>
        <source>{depth} mm deep</source>
        <translation>{depth} mm tief</translation>
    </message>
    <message>
        <source>{depth}, reamed 1:{taper:g} to {reamed}</source>
        <translation>{depth}, 1:{taper:g} aufgerieben auf {reamed}</translation>
    </message>
    <message>
        <source>{depth}, through</source>
        <translation>{depth}, durchgehend</translation>
    </message>
    <message>
        <source>{diameter} follower, {cutter} cutter, offset {offset}</source>
        <translation>Führung {diameter}, Fräser {cutter}, Versatz {offset}</translation>
    </message>
    <message>
        <source>{diameter} hole</source>
        <translation>Bohrung {diameter}</translation>
    </message>
    <message>
        <source>{diameter} mm wide</source>
        <translation>{diameter} mm weit</translation>
    </message>
    <message>
        <source>{diameter} steel or dowel, as long as blank and template are thick together</source>
        <translation>{diameter} Stahl oder Dübel, so lang wie Rohling und Schablone zusammen dick sind</translation>
    </message>
    <message>
        <source>{diameter} through</source>
        <translation>{diameter} durch</translation>
    </message>
    <message>
        <source>{diameter} through, is there</source>
        <translation>{diameter} durch, ist da</translation>
    </message>
    <message>
        <source>{diameter} through, reamed 1:{taper:g} to {reamed} at the {surface}</source>
        <translation>{diameter} durch, 1:{taper:g} aufgerieben auf {reamed} an der {surface}</translation>
    </message>
    <message>
        <source>{diameter} wide, {how}; {start}.</source>
        <translation>{diameter} weit, {how}; {start}.</translation>
    </message>
    <message>
        <source>{diameter} x {depth} deep</source>
        <translation>{diameter} x {depth} tief</translation>
    </message>
    <message>
        <source>{diameter} x {depth} deep from the {surface}</source>
        <translation>{diameter} x {depth} tief von der {surface}</translation>
    </message>
    <message>
        <source>{diameter} x {depth} deep, is there</source>
        <translation>{diameter} x {depth} tief, ist da</translation>
    </message>
    <message>
        <source>{diameter} x {depth} deep, reamed 1:{taper:g} to {reamed} at the {surface}</source>
        <translation>{diameter} x {depth} tief, 1:{taper:g} aufgerieben auf {reamed} an der {surface}</translation>
    </message>
    <message>
        <source>{diameter} {follower} with a {cutter} cutter</source>
        <translation>{follower} {diameter} mit Fräser {cutter}</translation>
    </message>
    <message>
        <source>{diameter}, through</source>
        <translation>{diameter}, durchgehend</translation>
    </message>
    <message>
        <source>{diameter}, {depth} deep</source>
        <translation>{diameter}, {depth} tief</translation>
    </message>
    <message>
        <source>{diameter}, {depth}, from the {surface}</source>
        <translation>{diameter}; {depth}, von der {surface}</translation>
    </message>
    <message>
        <source>{diameter}, {tilt}</source>
        <translation>{diameter}, {tilt}</translation>
    </message>
    <message>
        <source>{done} of {snags} snags done, {moves} moves tried</source>
        <translation>{done} von {snags} Haken erledigt, {moves} Schritte versucht</translation>
    </message>
    <message>
        <source>{done} of {steps} done, about {hours:.1f} hours left</source>
        <translation>{done} von {steps} erledigt, noch etwa {hours:.1f} Stunden</translation>
    </message>
    <message>
        <source>{done} of {steps} steps are done on the practice piece</source>
        <translation>{done} von {steps} Schritten sind am Probestück erledigt</translation>
    </message>
    <message>
        <source>{done} of {steps} steps are done on the real piece</source>
        <translation>{done} von {steps} Schritten sind am echten Stück erledigt</translation>
    </message>
    <message>
        <source>{done} of {steps} steps done, about {hours:.1f} hours left: go on with step {number}.</source>
        <translation>{done} von {steps} Schritten erledigt, etwa {hours:.1f} Stunden übrig: weiter mit Schritt {number}.</translation>
    </message>
    <message>
        <source>{drill} {diameter}, not in the rack</source>
        <translation>{drill} {diameter}, nicht im Bestand</translation>
    </message>
    <message>
        <source>{d} goes in from the side: measure y and how far below the face it lies.</source>
        <translation>{d} geht von der Seite hinein: y und die Lage unter der Vorderseite messen.</translation>
    </message>
    <message>
        <source>{d} is not drilled from the square edge.</source>
        <translation>{d} wird nicht von der geraden Kante gebohrt.</translation>
    </message>
    <message>
        <source>{d} is square to the face: it has neither a tilt nor a depth below the face.</source>
        <translation>{d} steht rechtwinklig zur Vorderseite: ohne Neigung und ohne Lage unter der Vorderseite.</translation>
    </message>
    <message>
        <source>{ear} is glued on with its glue line {was} (job book), and the drawing has it no more.</source>
        <translation>{ear} ist mit der Leimfuge {was} angeleimt (Werkbuch), und die Zeichnung hat es nicht mehr.</translation>
    </message>
    <message>
        <source>{ear} is glued on with its glue line {was} (job book); the drawing now says {now}.</source>
        <translation>{ear} ist mit der Leimfuge {was} angeleimt (Werkbuch); die Zeichnung sagt jetzt {now}.</translation>
    </message>
    <message>
        <source>{end} of {slot}</source>
        <translation>{end} von {slot}</translation>
    </message>
    <message>
        <source>{error} A starting rack is shown meanwhile; what you change in it is not kept.</source>
        <translation>{error} Solange wird ein Anfangsbestand gezeigt; was Sie darin ändern, wird nicht behalten.</translation>
    </message>
    <message>
        <source>{far} apart in the wood</source>
        <translation>{far} auseinander im Holz</translation>
    </message>
    <message>
        <source>{far} between the middles of {one} and {two}; at the closest {near}</source>
        <translation>{far} zwischen den Mitten von {one} und {two}; an der engsten Stelle {near}</translation>
    </message>
    <message>
        <source>{far} from {one} to {two}</source>
        <translation>{far} von {one} bis {two}</translation>
    </message>
    <message>
        <source>{far} to the bass</source>
        <translation>{far} zum Bass</translation>
    </message>
    <message>
        <source>{far} to the treble</source>
        <translation>{far} zum Diskant</translation>
    </message>
    <message>
        <source>{feature} has no place: {why}</source>
        <translation>{feature} hat keinen Platz: {why}</translation>
    </message>
    <message>
        <source>{fence} to the axis</source>
        <translation>{fence} bis zur Achse</translation>
    </message>
    <message>
        <source>{file} cannot be used: {why}.</source>
        <translation>{file} lässt sich nicht verwenden: {why}.</translation>
    </message>
    <message>
        <source>{file} is no layout, no drawing (DXF, SVG) and no picture.</source>
        <translation>{file} ist weder Entwurf noch Zeichnung (DXF, SVG) noch Bild.</translation>
    </message>
    <message>
        <source>{first} before {then}</source>
        <translation>{first} vor {then}</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation>{first} bis {last}</translation>
    </message>
    <message>
        <source>{grade}: {kind}. {sentence}</source>
        <translation>{grade}: {kind}. {sentence}</translation>
    </message>
    <message>
        <source>{ground} The straight edge of {width} at the other end would do as well: turn the drawing where that is the nut line.</source>
        <translation>{ground} Die gerade Kante von {width} am anderen Ende käme auch in Frage: die Zeichnung drehen, wenn dort die Sattellinie liegt.</translation>
    </message>
    <message>
        <source>{hardware} goes through the side, so it has no place in a hole through the face.</source>
        <translation>{hardware} geht durch die Seite und gehört darum in keine Bohrung durch die Vorderseite.</translation>
    </message>
    <message>
        <source>{harm}, after {names}</source>
        <translation>{harm}, nach {names}</translation>
    </message>
    <message>
        <source>{harm}, out of turn with {names}</source>
        <translation>{harm}, nicht in der Folge mit {names}</translation>
    </message>
    <message>
        <source>{head} begins with a letter or a digit and holds only letters, digits, spaces and _ . - / signs.</source>
        <translation>{head} beginnt mit einem Buchstaben oder einer Ziffer und enthält nur Buchstaben, Ziffern, Leerzeichen und die Zeichen _ . - /.</translation>
    </message>
    <message>
        <source>{head} begins with a letter or a digit and holds only letters, digits, spaces and _ . - signs.</source>
        <translation>{head} beginnt mit Buchstabe oder Ziffer und enthält nur Buchstaben, Ziffern, Leerzeichen und die Zeichen _ . -</translation>
    </message>
    <message>
        <source>{head} has at most {n} letters.</source>
        <translation>{head} hat höchstens {n} Zeichen.</translation>
    </message>
    <message>
        <source>{head} must be a number.</source>
        <translation>{head} muss eine Zahl sein.</translation>
    </message>
    <message>
        <source>{head} must be a whole number.</source>
        <translation>{head} muss eine ganze Zahl sein.</translation>
    </message>
    <message>
        <source>{head} must be above {number}.</source>
        <translation>{head} muss über {number} liegen.</translation>
    </message>
    <message>
        <source>{head} must be at least {number}.</source>
        <translation>{head} muss mindestens {number} sein.</translation>
    </message>
    <message>
        <source>{head} must be at most {number}.</source>
        <translation>{head} darf höchstens {number} sein.</translation>
    </message>
    <message>
        <source>{head} must be below {number}.</source>
        <translation>{head} muss unter {number} liegen.</translation>
    </message>
    <message>
        <source>{head} must be words.</source>
        <translation>{head} muss aus Worten bestehen.</translation>
    </message>
    <message>
        <source>{head} must be yes or no.</source>
        <translation>{head} muss ja oder nein sein.</translation>
    </message>
    <message>
        <source>{head} needs a word.</source>
        <translation>{head} braucht ein Wort.</translation>
    </message>
    <message>
        <source>{here}, not {there}</source>
        <translation>{here}, nicht {there}</translation>
    </message>
    <message>
        <source>{holes} for the waste, deepest {deep} to the point</source>
        <translation>{holes} für den Abfall, größte Tiefe {deep} bis zur Spitze</translation>
    </message>
    <message>
        <source>{holes} in {n} drilling</source>
        <translation>{holes} in {n} Bohrgang</translation>
    </message>
    <message>
        <source>{holes} in {n} drillings</source>
        <translation>{holes} in {n} Bohrgängen</translation>
    </message>
    <message>
        <source>{holes}, to {wide}</source>
        <translation>{holes}, auf {wide}</translation>
    </message>
    <message>
        <source>{holes}{more}, deepest {deep} to the point</source>
        <translation>{holes}{more}, größte Tiefe {deep} bis zur Spitze</translation>
    </message>
    <message>
        <source>{hole} has no mark on the square edge.</source>
        <translation>{hole} hat keinen Anriss auf der geraden Kante.</translation>
    </message>
    <message>
        <source>{hole} is plugged first, so it is one that is there already and carries no string retainer.</source>
        <translation>{hole} wird zuerst verschlossen, ist also schon da und trägt keinen Saitenniederhalter.</translation>
    </message>
    <message>
        <source>{hole} is there already: it may be plugged first, and is wood then.</source>
        <translation>{hole} ist schon da: Es kann zuerst verschlossen werden und ist dann Holz.</translation>
    </message>
    <message>
        <source>{how}, by a cutter of {cutter} mm</source>
        <translation>{how}, mit einem Fräser von {cutter} mm</translation>
    </message>
    <message>
        <source>{how}, in the corners alone</source>
        <translation>{how}, nur in den Ecken</translation>
    </message>
    <message>
        <source>{ids} share a tilt: {tilt}.</source>
        <translation>{ids} haben dieselbe Neigung: {tilt}.</translation>
    </message>
    <message>
        <source>{id} does not sit on the edge, so there is no flat to cut for it.</source>
        <translation>{id} sitzt nicht auf der Kante, dafür gibt es keine Fläche.</translation>
    </message>
    <message>
        <source>{id} has a ramp, and nothing is cut for a pocket that is there: leave the ramp out first.</source>
        <translation>{id} hat eine Rampe, und für eine vorhandene Tasche wird nichts geschnitten: zuerst die Rampe weglassen.</translation>
    </message>
    <message>
        <source>{id} has no flat yet: give its size and its depth.</source>
        <translation>{id} hat noch keine Fläche: ihre Größe und ihre Tiefe angeben.</translation>
    </message>
    <message>
        <source>{id} has no ramp yet: give its length and its depth.</source>
        <translation>{id} hat noch keine Rampe: ihre Länge und ihre Tiefe angeben.</translation>
    </message>
    <message>
        <source>{id} has no single point to align.</source>
        <translation>{id} hat keinen einzelnen Punkt zum Ausrichten.</translation>
    </message>
    <message>
        <source>{id} is no single hole.</source>
        <translation>{id} ist keine einzelne Bohrung.</translation>
    </message>
    <message>
        <source>{id} is no slot.</source>
        <translation>{id} ist kein Schlitz.</translation>
    </message>
    <message>
        <source>{id} is no tuner.</source>
        <translation>{id} ist keine Mechanik.</translation>
    </message>
    <message>
        <source>{id} is plugged first: nothing is screwed into it.</source>
        <translation>{id} wird zuerst verschlossen: Nichts wird hineingeschraubt.</translation>
    </message>
    <message>
        <source>{id} is there already: nothing is cut for it, so it has no ramp.</source>
        <translation>{id} ist schon da: Dafür wird nichts geschnitten, also gibt es keine Rampe.</translation>
    </message>
    <message>
        <source>{instrument}: {thin} to {thick}</source>
        <translation>{instrument}: {thin} bis {thick}</translation>
    </message>
    <message>
        <source>{item} needs a tilt of {tilt} degrees; the table goes to {most:g}.</source>
        <translation>{item} braucht {tilt} Grad Neigung; der Tisch geht bis {most:g}.</translation>
    </message>
    <message>
        <source>{lengths}; {bass} to the bass side, {treble} to the treble side</source>
        <translation>{lengths}; {bass} zur Bassseite, {treble} zur Diskantseite</translation>
    </message>
    <message>
        <source>{length} at {angle}</source>
        <translation>{length} unter {angle}</translation>
    </message>
    <message>
        <source>{length} mm long and {depth} mm deep ({angle:.1f} degrees)</source>
        <translation>{length} mm lang und {depth} mm tief ({angle:.1f} Grad)</translation>
    </message>
    <message>
        <source>{length}, radius {radius}</source>
        <translation>{length}, Radius {radius}</translation>
    </message>
    <message>
        <source>{line} has more than {n:,} nodes: draw it with fewer.</source>
        <translation>{line} hat mehr als {n:,} Knoten: mit weniger zeichnen.</translation>
    </message>
    <message>
        <source>{line} needs at least {n} nodes.</source>
        <translation>{line} braucht mindestens {n} Knoten.</translation>
    </message>
    <message>
        <source>{line} to the far end</source>
        <translation>{line} bis zum Ende</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>{made} of {all} drillings made.</source>
        <translation>{made} von {all} Bohrungen gemacht.</translation>
    </message>
    <message>
        <source>{mark} below the face</source>
        <translation>{mark} ab Vorderseite</translation>
    </message>
    <message>
        <source>{mark}: {x} points from the left, {y} from the top.</source>
        <translation>{mark}: {x} Punkte von links, {y} von oben.</translation>
    </message>
    <message>
        <source>{measured} of {needed}</source>
        <translation>{measured} von {needed}</translation>
    </message>
    <message>
        <source>{minutes} counted: {title}</source>
        <translation>{minutes} gezählt: {title}</translation>
    </message>
    <message>
        <source>{move}, and the other side alike</source>
        <translation>{move}, die andere Seite ebenso</translation>
    </message>
    <message>
        <source>{move}, as it is drilled</source>
        <translation>{move}, wie es gebohrt ist</translation>
    </message>
    <message>
        <source>{move}, going on from what is made already (job book)</source>
        <translation>{move}; an dem, was schon gemacht ist (Werkbuch), wird dann weitergearbeitet</translation>
    </message>
    <message>
        <source>{move}, out of its row</source>
        <translation>{move}, aus der Reihe heraus</translation>
    </message>
    <message>
        <source>{move}, out of its row, unless its tuners share a plate</source>
        <translation>{move}, aus der Reihe heraus, sofern deren Mechaniken nicht auf einer Platte sitzen</translation>
    </message>
    <message>
        <source>{move}, unless its tuners share a plate</source>
        <translation>{move}, sofern ihre Mechaniken nicht auf einer Platte sitzen</translation>
    </message>
    <message>
        <source>{move}; room beside {names} then gets tight</source>
        <translation>{move}; neben {names} wird es dann knapp</translation>
    </message>
    <message>
        <source>{move}; the papers or the template (job book) then have it elsewhere</source>
        <translation>{move}; die Papiere oder die Schablone (Werkbuch) haben es dann anderswo</translation>
    </message>
    <message>
        <source>{n:,} in {whole:,}</source>
        <translation>{n:,} von {whole:,}</translation>
    </message>
    <message>
        <source>{names} and {last}</source>
        <translation>{names} und {last}</translation>
    </message>
    <message>
        <source>{names} and {n} more</source>
        <translation>{names} und {n} weitere</translation>
    </message>
    <message>
        <source>{names} are cut in the real piece already (job book): more can be taken off, and no wood comes back.</source>
        <translation>{names} sind im echten Stück schon ausgearbeitet (Werkbuch): Mehr kann weggenommen werden, Holz kommt keines zurück.</translation>
    </message>
    <message>
        <source>{names} are drilled in the real piece already (job book) and stay where they are.</source>
        <translation>{names} sind im echten Stück schon gebohrt (Werkbuch) und bleiben, wo sie sind.</translation>
    </message>
    <message>
        <source>{names} are there already and stay as they are: the drawing has nothing in their place.</source>
        <translation>{names} sind schon da und bleiben, wie sie sind: Die Zeichnung hat nichts an ihrer Stelle.</translation>
    </message>
    <message>
        <source>{names} is cut in the real piece already (job book): more can be taken off, and no wood comes back.</source>
        <translation>{names} ist im echten Stück schon ausgearbeitet (Werkbuch): Mehr kann weggenommen werden, Holz kommt keines zurück.</translation>
    </message>
    <message>
        <source>{names} is drilled in the real piece already (job book) and stays where it is.</source>
        <translation>{names} ist im echten Stück schon gebohrt (Werkbuch) und bleibt, wo es ist.</translation>
    </message>
    <message>
        <source>{names} is glued on in the real piece already (job book) and stays as it is.</source>
        <translation>{names} ist im echten Stück schon angeleimt (Werkbuch) und bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>{names} is there already and stays as it is: the drawing has nothing in its place.</source>
        <translation>{names} ist schon da und bleibt, wie es ist: Die Zeichnung hat nichts an seiner Stelle.</translation>
    </message>
    <message>
        <source>{name} (not saved)</source>
        <translation>{name} (nicht gespeichert)</translation>
    </message>
    <message>
        <source>{name} and {n} more</source>
        <translation>{name} und {n} weitere</translation>
    </message>
    <message>
        <source>{name} breaks through the {side} by {measured} mm.</source>
        <translation>{name}: bricht {measured} mm durch die {side}.</translation>
    </message>
    <message>
        <source>{name} cannot be made small enough to keep: use a smaller picture.</source>
        <translation>{name} lässt sich nicht klein genug aufbewahren: ein kleineres Bild nehmen.</translation>
    </message>
    <message>
        <source>{name} cannot be used: {sentence}</source>
        <translation>{name} ist nicht brauchbar: {sentence}</translation>
    </message>
    <message>
        <source>{name} comes out of the {side} by {measured} mm{to_point}.</source>
        <translation>{name}: tritt {measured} mm weit aus ({side}){to_point}.</translation>
    </message>
    <message>
        <source>{name} comes {measured} mm into the flat for {item}.</source>
        <translation>{name} reicht {measured} mm in die Fläche für {item}.</translation>
    </message>
    <message>
        <source>{name} comes {measured} mm into the {other} with the drill's point.</source>
        <translation>{name}: die Bohrerspitze kommt {measured} mm hinein in {other}.</translation>
    </message>
    <message>
        <source>{name} has changes that are not saved.</source>
        <translation>{name} hat ungespeicherte Änderungen.</translation>
    </message>
    <message>
        <source>{name} has {a} mm of wood along its axis; {b} mm wanted, half of its depth.</source>
        <translation>{name}: nur {a} mm Holz entlang der Achse; {b} mm gewünscht, die Hälfte der Tiefe.</translation>
    </message>
    <message>
        <source>{name} has {width} x {height} points, more than can be read here: save it with a longer side of about {longest} points.</source>
        <translation>{name} hat {width} x {height} Punkte, mehr als hier lesbar: mit einer längeren Seite von etwa {longest} Punkten speichern.</translation>
    </message>
    <message>
        <source>{name} is a drawing, no layout yet: import it on the Outline stage, or make a layout of it with python3 -m app outline.</source>
        <translation>{name} ist eine Zeichnung, noch kein Entwurf: im Bereich Umriss einlesen oder mit python3 -m app outline einen Entwurf daraus machen.</translation>
    </message>
    <message>
        <source>{name} is a layout of version {version}; this program reads version {format}. Update Pegwright to open it; the file is left as it is.</source>
        <translation>{name} ist ein Entwurf der Version {version}; dieses Programm liest Version {format}. Zum Öffnen Pegwright aktualisieren; die Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>{name} is a list of printers of version {version}; this program reads version {known}. Update Pegwright to open it; the file is left as it is.</source>
        <translation>{name} ist eine Druckerliste der Version {version}; dieses Programm liest Version {known}. Zum Öffnen Pegwright aktualisieren; die Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>{name} is a rack of version {version}; this program reads version {known}. Update Pegwright to open it; the file is left as it is.</source>
        <translation>{name} ist ein Bestand der Version {version}; dieses Programm liest Version {known}. Zum Öffnen Pegwright aktualisieren; die Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>{name} is damaged: there has never been a layout of the version that it names.</source>
        <translation>{name} ist beschädigt: einen Entwurf der genannten Version gab es nie.</translation>
    </message>
    <message>
        <source>{name} is damaged: there has never been a list of printers of the version that it names.</source>
        <translation>{name} ist beschädigt: eine Druckerliste der genannten Version gab es nie.</translation>
    </message>
    <message>
        <source>{name} is damaged: there has never been a rack of the version that it names.</source>
        <translation>{name} ist beschädigt: einen Bestand der genannten Version gab es nie.</translation>
    </message>
    <message>
        <source>{name} is empty: it holds no layout.</source>
        <translation>{name} ist leer: kein Entwurf darin.</translation>
    </message>
    <message>
        <source>{name} is empty: it holds no printers. Delete it and measure the bars again.</source>
        <translation>{name} ist leer: keine Drucker. Löschen und die Balken neu messen.</translation>
    </message>
    <message>
        <source>{name} is empty: it holds no rack. Delete it to begin with the starting rack.</source>
        <translation>{name} ist leer: kein Bestand darin. Löschen, um mit dem Anfangsbestand zu beginnen.</translation>
    </message>
    <message>
        <source>{name} is far larger than a list of printers: choose the right file.</source>
        <translation>{name} ist viel größer als eine Druckerliste: die richtige Datei wählen.</translation>
    </message>
    <message>
        <source>{name} is far larger than a rack needs: choose the right file.</source>
        <translation>{name} ist viel größer, als ein Bestand braucht: die richtige Datei wählen.</translation>
    </message>
    <message>
        <source>{name} is not a headstock layout: it has no "pegwright" version at the top.</source>
        <translation>{name} ist kein Kopfplatten-Entwurf: oben fehlt die Version "pegwright".</translation>
    </message>
    <message>
        <source>{name} is not a headstock layout: {sentence}</source>
        <translation>{name} ist kein Kopfplatten-Entwurf: {sentence}</translation>
    </message>
    <message>
        <source>{name} is not a list of printers: it has no "pegwright_printers" version at the top.</source>
        <translation>{name} ist keine Druckerliste: oben fehlt die Version "pegwright_printers".</translation>
    </message>
    <message>
        <source>{name} is not a rack: it has no "pegwright_rack" version at the top.</source>
        <translation>{name} ist kein Bestand: oben fehlt die Version "pegwright_rack".</translation>
    </message>
    <message>
        <source>{name} is open in another window with newer work: saving this asks for a place.</source>
        <translation>{name} ist mit neuerer Arbeit in einem anderen Fenster offen: Beim Speichern wird nach einem Ort gefragt.</translation>
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
        <translation>{name} ist schon da. Die jetzige Fassung bliebe als Fassung davor daneben.</translation>
    </message>
    <message>
        <source>{name} is there already. What is in it now would be lost.</source>
        <translation>{name} ist schon da. Was jetzt darin steht, ginge verloren.</translation>
    </message>
    <message>
        <source>{name} is {data:.0f} MB, far more than a layout needs: choose the right file.</source>
        <translation>{name} hat {data:.0f} MB, viel mehr als ein Entwurf braucht: die richtige Datei wählen.</translation>
    </message>
    <message>
        <source>{name} leaves {a} mm of wood to the flat for {item}; {b} mm wanted.</source>
        <translation>{name}: nur {a} mm Holz bis zur Fläche für {item}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{name} leaves {a} mm of wood to the {other}, to the drill's point; {b} mm wanted.</source>
        <translation>{name}: von der Bohrerspitze nur {a} mm Holz bis {other}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{name} leaves {a} mm of wood to the {side}; {b} mm wanted.</source>
        <translation>{name}: nur {a} mm Holz bis zur {side}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{name} leaves {a} mm of wood to the {side}{to_point}; {b} mm wanted.</source>
        <translation>{name}: nur {a} mm Holz bis zur {side}{to_point}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{name} meets no wood: it lies wholly past the {side}.</source>
        <translation>{name}: trifft kein Holz, liegt ganz jenseits der {side}.</translation>
    </message>
    <message>
        <source>{name} meets no wood: where it would go in, the head has ended.</source>
        <translation>{name}: trifft kein Holz, an der Stelle ist die Kopfplatte zu Ende.</translation>
    </message>
    <message>
        <source>{name} mirrored</source>
        <comment>name of a feature</comment>
        <translation>{name} gespiegelt</translation>
    </message>
    <message>
        <source>{name} was not written as long as you waited: its drive does not answer. What was there before stays, unless it was being replaced at that very moment.</source>
        <translation>{name} wurde nicht geschrieben, solange Sie gewartet haben: das Laufwerk antwortet nicht. Was vorher dort war, bleibt, sofern es nicht gerade in diesem Augenblick ersetzt wurde.</translation>
    </message>
    <message>
        <source>{name} was written by another program after it was opened here.</source>
        <translation>{name} wurde nach dem Öffnen hier von einem anderen Programm geschrieben.</translation>
    </message>
    <message>
        <source>{name} – not there now</source>
        <translation>{name} – zurzeit nicht da</translation>
    </message>
    <message>
        <source>{name}. Hours are planned from common rates (common practice, no source); write down what it took, and the next plan is better.</source>
        <translation>{name}. Die Stunden sind nach üblichen Richtwerten geplant (übliche Praxis, ohne Quelle); schreiben Sie auf, was es gebraucht hat, dann wird der nächste Plan besser.</translation>
    </message>
    <message>
        <source>{name}: template, 1 unit = 1 mm</source>
        <translation>{name}: Schablone, 1 Einheit = 1 mm</translation>
    </message>
    <message>
        <source>{new} would be mistaken for {other}, as holes are told by the name and a number behind a point: choose another.</source>
        <translation>{new} würde mit {other} verwechselt, da Bohrungen mit dem Namen und einer Zahl nach einem Punkt benannt werden: einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>{nodes} nodes, {corners} of them corners. The line and the edge in the picture stray by no more than {far} anywhere.</source>
        <translation>{nodes} Knoten, davon {corners} Ecken. Linie und Kante im Bild weichen nirgends mehr als {far} voneinander ab.</translation>
    </message>
    <message>
        <source>{n} 3-D face</source>
        <translation>{n} 3D-Fläche</translation>
    </message>
    <message>
        <source>{n} 3-D faces</source>
        <translation>{n} 3D-Flächen</translation>
    </message>
    <message>
        <source>{n} block scaled to nothing</source>
        <translation>{n} auf null skalierter Block</translation>
    </message>
    <message>
        <source>{n} block that the file does not hold</source>
        <translation>{n} Block, der der Datei fehlt</translation>
    </message>
    <message>
        <source>{n} blocks scaled to nothing</source>
        <translation>{n} auf null skalierte Blöcke</translation>
    </message>
    <message>
        <source>{n} blocks that the file does not hold</source>
        <translation>{n} Blöcke, die der Datei fehlen</translation>
    </message>
    <message>
        <source>{n} change</source>
        <translation>{n} Wechsel</translation>
    </message>
    <message>
        <source>{n} changes</source>
        <translation>{n} Wechsel</translation>
    </message>
    <message>
        <source>{n} counterbore</source>
        <translation>{n} Senkung</translation>
    </message>
    <message>
        <source>{n} counterbores</source>
        <translation>{n} Senkungen</translation>
    </message>
    <message>
        <source>{n} damaged block</source>
        <translation>{n} beschädigter Block</translation>
    </message>
    <message>
        <source>{n} damaged blocks</source>
        <translation>{n} beschädigte Blöcke</translation>
    </message>
    <message>
        <source>{n} damaged {kind} shape</source>
        <translation>{n} beschädigte Form der Art {kind}</translation>
    </message>
    <message>
        <source>{n} damaged {kind} shapes</source>
        <translation>{n} beschädigte Formen der Art {kind}</translation>
    </message>
    <message>
        <source>{n} dimension</source>
        <translation>{n} Maß</translation>
    </message>
    <message>
        <source>{n} dimensions</source>
        <translation>{n} Maße</translation>
    </message>
    <message>
        <source>{n} drilling</source>
        <translation>{n} Bohrgang</translation>
    </message>
    <message>
        <source>{n} drilling operation</source>
        <translation>{n} Bohrgang</translation>
    </message>
    <message>
        <source>{n} drilling operations</source>
        <translation>{n} Bohrgänge</translation>
    </message>
    <message>
        <source>{n} drillings</source>
        <translation>{n} Bohrgänge</translation>
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
        <source>{n} filled area</source>
        <translation>{n} gefüllte Fläche</translation>
    </message>
    <message>
        <source>{n} filled areas</source>
        <translation>{n} gefüllte Flächen</translation>
    </message>
    <message>
        <source>{n} filled shape was open and closed with a straight line.</source>
        <translation>{n} gefüllte Form war offen und wurde mit einer Geraden geschlossen.</translation>
    </message>
    <message>
        <source>{n} filled shapes were open and closed with a straight line.</source>
        <translation>{n} gefüllte Formen waren offen und wurden mit einer Geraden geschlossen.</translation>
    </message>
    <message>
        <source>{n} foreign content</source>
        <translation>{n} fremder Inhalt</translation>
    </message>
    <message>
        <source>{n} foreign contents</source>
        <translation>{n} fremde Inhalte</translation>
    </message>
    <message>
        <source>{n} gap was closed: straight lines run on until they meet, all else is joined by a short straight piece. It was {size:.3f} mm wide at ({x:.2f}, {y:.2f}).</source>
        <translation>{n} Lücke wurde geschlossen: Geraden laufen weiter, bis sie sich treffen, alles andere verbindet ein kurzes gerades Stück. Sie war {size:.3f} mm weit, bei ({x:.2f}; {y:.2f}).</translation>
    </message>
    <message>
        <source>{n} gaps were closed: straight lines run on until they meet, all else is joined by short straight pieces. The widest was {size:.3f} mm at ({x:.2f}, {y:.2f}).</source>
        <translation>{n} Lücken wurden geschlossen: Geraden laufen weiter, bis sie sich treffen, alles andere verbinden kurze gerade Stücke. Die weiteste war {size:.3f} mm, bei ({x:.2f}; {y:.2f}).</translation>
    </message>
    <message>
        <source>{n} hatch</source>
        <translation>{n} Schraffur</translation>
    </message>
    <message>
        <source>{n} hatches</source>
        <translation>{n} Schraffuren</translation>
    </message>
    <message>
        <source>{n} held</source>
        <translation>{n} gehalten</translation>
    </message>
    <message>
        <source>{n} hidden shape</source>
        <translation>{n} verborgene Form</translation>
    </message>
    <message>
        <source>{n} hidden shapes</source>
        <translation>{n} verborgene Formen</translation>
    </message>
    <message>
        <source>{n} hole</source>
        <translation>{n} Bohrung</translation>
    </message>
    <message>
        <source>{n} hole, {wide} wide</source>
        <translation>{n} Loch, {wide} weit</translation>
    </message>
    <message>
        <source>{n} holes</source>
        <translation>{n} Bohrungen</translation>
    </message>
    <message>
        <source>{n} holes, {diameter} wide</source>
        <translation>{n} Bohrungen, {diameter} weit</translation>
    </message>
    <message>
        <source>{n} holes, {wide} wide</source>
        <translation>{n} Löcher, {wide} weit</translation>
    </message>
    <message>
        <source>{n} leader</source>
        <translation>{n} Bezugslinie</translation>
    </message>
    <message>
        <source>{n} leaders</source>
        <translation>{n} Bezugslinien</translation>
    </message>
    <message>
        <source>{n} line stays open: it belongs to no loop.</source>
        <translation>{n} Linie bleibt offen: sie gehört zu keiner geschlossenen.</translation>
    </message>
    <message>
        <source>{n} line stays open; loose ends are apart by {places}: join them in the drawing, or import with a larger gap.</source>
        <translation>{n} Linie bleibt offen; lose Enden liegen auseinander: {places}: in der Zeichnung verbinden oder mit größerer Lücke einlesen.</translation>
    </message>
    <message>
        <source>{n} line that encloses nothing of its own was left out.</source>
        <translation>{n} Linie, die nichts Eigenes umschließt, wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{n} lines stay open: they belong to no loop.</source>
        <translation>{n} Linien bleiben offen: sie gehören zu keiner geschlossenen.</translation>
    </message>
    <message>
        <source>{n} lines stay open; loose ends are apart by {places}: join them in the drawing, or import with a larger gap.</source>
        <translation>{n} Linien bleiben offen; lose Enden liegen auseinander: {places}: in der Zeichnung verbinden oder mit größerer Lücke einlesen.</translation>
    </message>
    <message>
        <source>{n} lines that enclose nothing of their own were left out.</source>
        <translation>{n} Linien, die nichts Eigenes umschließen, wurden ausgelassen.</translation>
    </message>
    <message>
        <source>{n} locating pin</source>
        <translation>{n} Passstift</translation>
    </message>
    <message>
        <source>{n} locating pins</source>
        <translation>{n} Passstifte</translation>
    </message>
    <message>
        <source>{n} loop behind it was left out.</source>
        <translation>{n} Linienzug dahinter wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{n} loops behind it were left out.</source>
        <translation>{n} Linienzüge dahinter wurden ausgelassen.</translation>
    </message>
    <message>
        <source>{n} more</source>
        <translation>{n} weitere</translation>
    </message>
    <message>
        <source>{n} more lie in the same folder.</source>
        <translation>{n} weitere liegen im selben Ordner.</translation>
    </message>
    <message>
        <source>{n} more lies in the same folder.</source>
        <translation>{n} weiteres liegt im selben Ordner.</translation>
    </message>
    <message>
        <source>{n} more thing was noticed in the drawing.</source>
        <translation>{n} weiterer Hinweis zur Zeichnung.</translation>
    </message>
    <message>
        <source>{n} more things were noticed in the drawing.</source>
        <translation>{n} weitere Hinweise zur Zeichnung.</translation>
    </message>
    <message>
        <source>{n} nodes held</source>
        <translation>{n} Knoten gehalten</translation>
    </message>
    <message>
        <source>{n} note</source>
        <translation>{n} Hinweis</translation>
    </message>
    <message>
        <source>{n} notes</source>
        <translation>{n} Hinweise</translation>
    </message>
    <message>
        <source>{n} of {diameter}</source>
        <translation>{n} mit {diameter}</translation>
    </message>
    <message>
        <source>{n} of {pairs} take their part.</source>
        <translation>{n} von {pairs} nehmen ihr Teil auf.</translation>
    </message>
    <message>
        <source>{n} of {pairs} takes its part.</source>
        <translation>{n} von {pairs} nimmt sein Teil auf.</translation>
    </message>
    <message>
        <source>{n} older note stands in the job book.</source>
        <translation>{n} ältere Notiz steht im Werkbuch.</translation>
    </message>
    <message>
        <source>{n} older notes stand in the job book.</source>
        <translation>{n} ältere Notizen stehen im Werkbuch.</translation>
    </message>
    <message>
        <source>{n} open line behind it was left out.</source>
        <translation>{n} offene Linie dahinter wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{n} open line was closed by the straight edge of the outline on which it ends, as the nut line closes the pocket of a truss rod.</source>
        <translation>{n} offene Linie wurde durch die gerade Kante des Umrisses geschlossen, an der sie endet, wie die Sattellinie eine Halsstabtasche schließt.</translation>
    </message>
    <message>
        <source>{n} open lines behind it were left out.</source>
        <translation>{n} offene Linien dahinter wurden ausgelassen.</translation>
    </message>
    <message>
        <source>{n} open lines were closed by the straight edge of the outline on which they end, as the nut line closes the pocket of a truss rod.</source>
        <translation>{n} offene Linien wurden durch die gerade Kante des Umrisses geschlossen, an der sie enden, wie die Sattellinie eine Halsstabtasche schließt.</translation>
    </message>
    <message>
        <source>{n} page of {paper} sent to {name}, at 100 %, not corrected: measure the bars.</source>
        <translation>{n} Seite {paper} an {name} gesendet, mit 100 %, nicht korrigiert: die Balken messen.</translation>
    </message>
    <message>
        <source>{n} page of {paper} sent to {name}, {correction}.</source>
        <translation>{n} Seite {paper} an {name} gesendet, {correction}.</translation>
    </message>
    <message>
        <source>{n} pages of {paper} sent to {name}, at 100 %, not corrected: measure the bars.</source>
        <translation>{n} Seiten {paper} an {name} gesendet, mit 100 %, nicht korrigiert: die Balken messen.</translation>
    </message>
    <message>
        <source>{n} pages of {paper} sent to {name}, {correction}.</source>
        <translation>{n} Seiten {paper} an {name} gesendet, {correction}.</translation>
    </message>
    <message>
        <source>{n} pair of joined holes</source>
        <translation>{n} verbundenen Bohrungspaar</translation>
    </message>
    <message>
        <source>{n} pairs of joined holes</source>
        <translation>{n} verbundenen Bohrungspaaren</translation>
    </message>
    <message>
        <source>{n} pass</source>
        <translation>{n} Durchgang</translation>
    </message>
    <message>
        <source>{n} passes</source>
        <translation>{n} Durchgänge</translation>
    </message>
    <message>
        <source>{n} picture</source>
        <translation>{n} Bild</translation>
    </message>
    <message>
        <source>{n} pictures</source>
        <translation>{n} Bilder</translation>
    </message>
    <message>
        <source>{n} piece was drawn twice and counted once.</source>
        <translation>{n} Stück war doppelt gezeichnet und zählt einmal.</translation>
    </message>
    <message>
        <source>{n} pieces were drawn twice and counted once.</source>
        <translation>{n} Stücke waren doppelt gezeichnet und zählen einmal.</translation>
    </message>
    <message>
        <source>{n} pin</source>
        <translation>{n} Stift</translation>
    </message>
    <message>
        <source>{n} pins</source>
        <translation>{n} Stifte</translation>
    </message>
    <message>
        <source>{n} pocket that is there</source>
        <translation>{n} vorhandene Tasche</translation>
    </message>
    <message>
        <source>{n} pockets that are there</source>
        <translation>{n} vorhandene Taschen</translation>
    </message>
    <message>
        <source>{n} point</source>
        <translation>{n} Punkt</translation>
    </message>
    <message>
        <source>{n} point or small cross does not lie in the wood of the head, or too near its edge, and was left out: at {places}.</source>
        <translation>{n} Punkt oder kleines Kreuz liegt nicht im Holz der Kopfplatte oder zu nah an ihrem Rand und wurde ausgelassen: bei {places}.</translation>
    </message>
    <message>
        <source>{n} point or small cross was taken for the middle of a hole, {size:g} mm wide: give it its size, or hardware, when it is imported.</source>
        <translation>{n} Punkt oder kleines Kreuz wurde als Mitte einer Bohrung von {size:g} mm genommen: nach dem Einlesen Größe oder Mechanik dazu angeben.</translation>
    </message>
    <message>
        <source>{n} points</source>
        <translation>{n} Punkte</translation>
    </message>
    <message>
        <source>{n} points or small crosses do not lie in the wood of the head, or too near its edge, and were left out: at {places}.</source>
        <translation>{n} Punkte oder kleine Kreuze liegen nicht im Holz der Kopfplatte oder zu nah an ihrem Rand und wurden ausgelassen: bei {places}.</translation>
    </message>
    <message>
        <source>{n} points or small crosses were taken for the middles of holes, {size:g} mm wide: give them their size, or hardware, when they are imported.</source>
        <translation>{n} Punkte oder kleine Kreuze wurden als Mitten von Bohrungen von {size:g} mm genommen: nach dem Einlesen Größe oder Mechanik dazu angeben.</translation>
    </message>
    <message>
        <source>{n} reading</source>
        <translation>{n} Messwert</translation>
    </message>
    <message>
        <source>{n} readings</source>
        <translation>{n} Messwerten</translation>
    </message>
    <message>
        <source>{n} readings are so far off that a slip of the pen is likelier; left out below: {which}.</source>
        <translation>{n} Messwerte weichen so weit ab, dass Schreibfehler näherliegen; unten ausgelassen: {which}.</translation>
    </message>
    <message>
        <source>{n} reference to what the file does not hold</source>
        <translation>{n} Verweis auf etwas, das der Datei fehlt</translation>
    </message>
    <message>
        <source>{n} references to what the file does not hold</source>
        <translation>{n} Verweise auf etwas, das der Datei fehlt</translation>
    </message>
    <message>
        <source>{n} region</source>
        <translation>{n} Region</translation>
    </message>
    <message>
        <source>{n} regions</source>
        <translation>{n} Regionen</translation>
    </message>
    <message>
        <source>{n} round loop lies about the middle of a hole, as bushings, washers and posts are drawn, and was left out: see whether the hole that was taken is the bore.</source>
        <translation>{n} runder Linienzug liegt um die Mitte einer Bohrung, wie Buchsen, Scheiben und Wellen gezeichnet werden, und wurde ausgelassen: sehen, ob die genommene die Bohrung ist.</translation>
    </message>
    <message>
        <source>{n} round loops lie about the middles of holes, as bushings, washers and posts are drawn, and were left out: see whether the holes that were taken are the bores.</source>
        <translation>{n} runde Linienzüge liegen um die Mitten von Bohrungen, wie Buchsen, Scheiben und Wellen gezeichnet werden, und wurden ausgelassen: sehen, ob die genommenen die Bohrungen sind.</translation>
    </message>
    <message>
        <source>{n} screw pilot later (step {steps}): by hand through the plate once the outline is finished, {holes}.</source>
        <translation>{n} Vorbohrung später (Schritt {steps}): von Hand durch die Platte, wenn der Umriss fertig ist, {holes}.</translation>
    </message>
    <message>
        <source>{n} screw pilots later (steps {steps}): by hand through the plate once the outline is finished, {holes}.</source>
        <translation>{n} Vorbohrungen später (Schritte {steps}): von Hand durch die Platte, wenn der Umriss fertig ist, {holes}.</translation>
    </message>
    <message>
        <source>{n} set-up</source>
        <translation>{n} Einstellung</translation>
    </message>
    <message>
        <source>{n} set-ups</source>
        <translation>{n} Einstellungen</translation>
    </message>
    <message>
        <source>{n} shape on paper pages</source>
        <translation>{n} Form auf Papierseiten</translation>
    </message>
    <message>
        <source>{n} shape with a broken transform</source>
        <translation>{n} Form mit fehlerhafter Abbildung</translation>
    </message>
    <message>
        <source>{n} shape with impossible coordinates</source>
        <translation>{n} Form mit unmöglichen Koordinaten</translation>
    </message>
    <message>
        <source>{n} shape without length</source>
        <translation>{n} Form ohne Länge</translation>
    </message>
    <message>
        <source>{n} shape without line or fill</source>
        <translation>{n} Form ohne Linie und Füllung</translation>
    </message>
    <message>
        <source>{n} shape, as narrow as letters and inlaid lines are, was left out.</source>
        <translation>{n} Form, so schmal wie Buchstaben und eingelegte Linien, wurde weggelassen.</translation>
    </message>
    <message>
        <source>{n} shapes on paper pages</source>
        <translation>{n} Formen auf Papierseiten</translation>
    </message>
    <message>
        <source>{n} shapes with a broken transform</source>
        <translation>{n} Formen mit fehlerhafter Abbildung</translation>
    </message>
    <message>
        <source>{n} shapes with impossible coordinates</source>
        <translation>{n} Formen mit unmöglichen Koordinaten</translation>
    </message>
    <message>
        <source>{n} shapes without length</source>
        <translation>{n} Formen ohne Länge</translation>
    </message>
    <message>
        <source>{n} shapes without line or fill</source>
        <translation>{n} Formen ohne Linie und Füllung</translation>
    </message>
    <message>
        <source>{n} shapes, as narrow as letters and inlaid lines are, were left out.</source>
        <translation>{n} Formen, so schmal wie Buchstaben und eingelegte Linien, wurden weggelassen.</translation>
    </message>
    <message>
        <source>{n} slot</source>
        <translation>{n} Schlitz</translation>
    </message>
    <message>
        <source>{n} slot, {size}</source>
        <translation>{n} Schlitz, {size}</translation>
    </message>
    <message>
        <source>{n} slots</source>
        <translation>{n} Schlitze</translation>
    </message>
    <message>
        <source>{n} slots, {size}</source>
        <translation>{n} Schlitze, {size}</translation>
    </message>
    <message>
        <source>{n} snag.</source>
        <translation>{n} Haken.</translation>
    </message>
    <message>
        <source>{n} snags.</source>
        <translation>{n} Haken.</translation>
    </message>
    <message>
        <source>{n} solid bodies</source>
        <translation>{n} Volumenkörper</translation>
    </message>
    <message>
        <source>{n} solid body</source>
        <translation>{n} Volumenkörper</translation>
    </message>
    <message>
        <source>{n} spoil the work</source>
        <translation>{n} verderben die Arbeit</translation>
    </message>
    <message>
        <source>{n} spoils the work</source>
        <translation>{n} verdirbt die Arbeit</translation>
    </message>
    <message>
        <source>{n} step</source>
        <translation>{n} Schritt</translation>
    </message>
    <message>
        <source>{n} steps</source>
        <translation>{n} Schritte</translation>
    </message>
    <message>
        <source>{n} steps are spoiled or unsafe where they stand. Drag them, or go back to the best order.</source>
        <translation>{n} Schritte sind an ihrer Stelle verdorben oder unsicher. Ziehen Sie sie an andere Stellen oder gehen Sie zur besten Folge zurück.</translation>
    </message>
    <message>
        <source>{n} surface</source>
        <translation>{n} Oberfläche</translation>
    </message>
    <message>
        <source>{n} surfaces</source>
        <translation>{n} Oberflächen</translation>
    </message>
    <message>
        <source>{n} table</source>
        <translation>{n} Tabelle</translation>
    </message>
    <message>
        <source>{n} tables</source>
        <translation>{n} Tabellen</translation>
    </message>
    <message>
        <source>{n} text</source>
        <translation>{n} Text</translation>
    </message>
    <message>
        <source>{n} texts</source>
        <translation>{n} Texte</translation>
    </message>
    <message>
        <source>{n} thing copied: Ctrl+V hangs it at the pointer.</source>
        <translation>{n} Teil kopiert: Strg+V hängt es an den Zeiger.</translation>
    </message>
    <message>
        <source>{n} things are held: {names}.</source>
        <translation>{n} Teile werden gehalten: {names}.</translation>
    </message>
    <message>
        <source>{n} things copied: Ctrl+V hangs them at the pointer.</source>
        <translation>{n} Teile kopiert: Strg+V hängt sie an den Zeiger.</translation>
    </message>
    <message>
        <source>{n} things held</source>
        <translation>{n} Teile gehalten</translation>
    </message>
    <message>
        <source>{n} tight</source>
        <translation>{n} knapp</translation>
    </message>
    <message>
        <source>{n} tilt</source>
        <translation>{n} Neigung</translation>
    </message>
    <message>
        <source>{n} tilts</source>
        <translation>{n} Neigungen</translation>
    </message>
    <message>
        <source>{n} times</source>
        <translation>{n}-mal</translation>
    </message>
    <message>
        <source>{n} tuner</source>
        <translation>{n} Mechanik</translation>
    </message>
    <message>
        <source>{n} tuners</source>
        <translation>{n} Mechaniken</translation>
    </message>
    <message>
        <source>{n} tuners in a row, {pitch} apart, take a blank {long} long from the nut line; this one is {length}.</source>
        <translation>{n} Mechaniken in einer Reihe mit {pitch} Abstand brauchen einen Rohling von {long} ab der Sattellinie; dieser hat {length}.</translation>
    </message>
    <message>
        <source>{n} tuners in a row, {pitch} apart, take a blank {long} long from the nut line; this one is {length}: make it longer, or set them {nearer} apart.</source>
        <translation>{n} Mechaniken in einer Reihe mit {pitch} Abstand brauchen einen Rohling von {long} ab der Sattellinie; dieser hat {length}: länger machen oder auf {nearer} Abstand setzen.</translation>
    </message>
    <message>
        <source>{n} unbounded line</source>
        <translation>{n} unbegrenzte Linie</translation>
    </message>
    <message>
        <source>{n} unbounded lines</source>
        <translation>{n} unbegrenzte Linien</translation>
    </message>
    <message>
        <source>{n} viewport</source>
        <translation>{n} Ansichtsfenster</translation>
    </message>
    <message>
        <source>{n} viewports</source>
        <translation>{n} Ansichtsfenster</translation>
    </message>
    <message>
        <source>{n} waste holes drilled</source>
        <translation>{n} Räumbohrungen gebohrt</translation>
    </message>
    <message>
        <source>{n} white page background</source>
        <translation>{n} weißer Seitenhintergrund</translation>
    </message>
    <message>
        <source>{n} white page backgrounds</source>
        <translation>{n} weiße Seitenhintergründe</translation>
    </message>
    <message>
        <source>{n} {kind} shape</source>
        <translation>{n} Form der Art {kind}</translation>
    </message>
    <message>
        <source>{n} {kind} shapes</source>
        <translation>{n} Formen der Art {kind}</translation>
    </message>
    <message>
        <source>{of} cannot become that short.</source>
        <translation>{of} kann nicht so kurz werden.</translation>
    </message>
    <message>
        <source>{of} has no ends: its wall is drawn.</source>
        <translation>{of} hat keine Enden: die Wand ist gezeichnet.</translation>
    </message>
    <message>
        <source>{one} and {two}</source>
        <translation>{one} und {two}</translation>
    </message>
    <message>
        <source>{one} and {two} overlap.</source>
        <translation>{one} und {two} überlappen sich.</translation>
    </message>
    <message>
        <source>{one} close to the outline</source>
        <translation>{one} nahe am Umriss</translation>
    </message>
    <message>
        <source>{one} comes after {two}.</source>
        <translation>{one} kommt nach {two}.</translation>
    </message>
    <message>
        <source>{one} comes before {two}.</source>
        <translation>{one} kommt vor {two}.</translation>
    </message>
    <message>
        <source>{one} cuts {measured} mm into the {two}; {needed} mm of wood wanted between them.</source>
        <translation>{one}: schneidet {measured} mm hinein in {two}; {needed} mm Holz dazwischen gewünscht.</translation>
    </message>
    <message>
        <source>{one} like {bit}</source>
        <translation>{one} wie {bit}</translation>
    </message>
    <message>
        <source>{one} meets another</source>
        <translation>{one} trifft {one}</translation>
    </message>
    <message>
        <source>{one} meets slot</source>
        <translation>{one} trifft Schlitz</translation>
    </message>
    <message>
        <source>{one} meets {two}</source>
        <translation>{one} trifft {two}</translation>
    </message>
    <message>
        <source>{one} must come before {two} ({reason})</source>
        <translation>{one} muss vor {two} kommen ({reason})</translation>
    </message>
    <message>
        <source>{one} passes {a} mm from the {two}; {b} mm wanted.</source>
        <translation>{one}: nur {a} mm Abstand zu {two}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{one} to {other}</source>
        <translation>{one} bis {other}</translation>
    </message>
    <message>
        <source>{one} to {other}, {how}: {value}{planned}</source>
        <translation>{one} bis {other}, {how}: {value}{planned}</translation>
    </message>
    <message>
        <source>{one} touches the {two}; {needed} mm wanted.</source>
        <translation>{one}: berührt {two}; {needed} mm gewünscht.</translation>
    </message>
    <message>
        <source>{openings}, {outside}</source>
        <translation>{openings}, {outside}</translation>
    </message>
    <message>
        <source>{opening} ends {a} mm before the nut line; {b} mm wanted.</source>
        <translation>{opening} endet {a} mm vor der Sattellinie; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{opening} leaves the head by {measured} mm.</source>
        <translation>{opening} ragt {measured} mm aus der Kopfplatte.</translation>
    </message>
    <message>
        <source>{opening} leaves {a} mm of wood below its floor; {b} mm wanted.</source>
        <translation>{opening} lässt unter seinem Boden {a} mm Holz; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{opening} runs {measured} mm past the nut line.</source>
        <translation>{opening} reicht {measured} mm über die Sattellinie.</translation>
    </message>
    <message>
        <source>{operations} steps, {holes} {drillings}, {set_ups} set-ups at machines, {changes} of machine, bit, table or side{tilts}; about {total:.1f} hours (common practice, no source).{dry}{found} {how}{own}</source>
        <translation>{operations} Schritte, {holes} {drillings}, {set_ups} Einstellungen an Maschinen, {changes} von Maschine, Werkzeug, Tisch oder Seite{tilts}; etwa {total:.1f} Stunden (übliche Praxis, ohne Quelle).{dry}{found} {how}{own}</translation>
    </message>
    <message>
        <source>{operation} {diameter} through</source>
        <translation>{operation} {diameter} durchgehend</translation>
    </message>
    <message>
        <source>{operation} {diameter} x {depth} deep</source>
        <translation>{operation} {diameter} x {depth} tief</translation>
    </message>
    <message>
        <source>{operation}, reamed 1:{taper:g} to {reamed}</source>
        <translation>{operation}, 1:{taper:g} aufgerieben auf {reamed}</translation>
    </message>
    <message>
        <source>{outer} and {inner} to spare</source>
        <translation>{outer} und {inner} frei</translation>
    </message>
    <message>
        <source>{out} is the drawing itself: name another file for the layout.</source>
        <translation>{out} ist die Zeichnung selbst: eine andere Datei für den Entwurf nennen.</translation>
    </message>
    <message>
        <source>{own} leaves {a} mm below the post of {item}; {b} mm wanted.</source>
        <translation>{own} lässt {a} mm unter der Welle von {item}; {b} mm gewünscht.</translation>
    </message>
    <message>
        <source>{part}: {one} and {other} are {by} too far apart, the play is {play}: the part does not go on as it is.</source>
        <translation>{part}: {one} und {other} liegen {by} zu weit auseinander, das Spiel ist {play}: so lässt sich das Teil nicht aufsetzen.</translation>
    </message>
    <message>
        <source>{part}: {one} and {other} are {by} too near, the play is {play}: the part does not go on as it is.</source>
        <translation>{part}: {one} und {other} liegen {by} zu nah, das Spiel ist {play}: so lässt sich das Teil nicht aufsetzen.</translation>
    </message>
    <message>
        <source>{paths} files written to {folder}</source>
        <translation>{paths} Dateien ausgegeben in {folder}</translation>
    </message>
    <message>
        <source>{path} cannot be read: {why}.</source>
        <translation>{path} ist nicht lesbar: {why}.</translation>
    </message>
    <message>
        <source>{path} cannot be renamed: {why}. Move it yourself.</source>
        <translation>{path} lässt sich nicht umbenennen: {why}. Selbst verschieben.</translation>
    </message>
    <message>
        <source>{path} cannot be written: {why}. Choose another place; a file that was there before is untouched.</source>
        <translation>{path} lässt sich nicht schreiben: {why}. Einen anderen Ort wählen; eine vorhandene Datei ist unberührt.</translation>
    </message>
    <message>
        <source>{path} claims to be far larger than any camera's picture: save a smaller one.</source>
        <translation>{path} gibt an, viel größer als ein Kamerabild zu sein: ein kleineres speichern.</translation>
    </message>
    <message>
        <source>{path} is a folder: name a file in it.</source>
        <translation>{path} ist ein Ordner: eine Datei darin nennen.</translation>
    </message>
    <message>
        <source>{path} is damaged: save the picture again.</source>
        <translation>{path} ist beschädigt: das Bild erneut speichern.</translation>
    </message>
    <message>
        <source>{path} is no picture that can be read: save it as JPEG or PNG.</source>
        <translation>{path} ist kein lesbares Bild: als JPEG oder PNG speichern.</translation>
    </message>
    <message>
        <source>{path} is written, but the disk did not confirm that it will keep it: {why}. Save once more, or in another place.</source>
        <translation>{path} ist geschrieben, aber der Datenträger hat nicht bestätigt, dass er es behält: {why}. Noch einmal speichern, oder an einem anderen Ort.</translation>
    </message>
    <message>
        <source>{path} is {st_size:.0f} MB: save a smaller picture.</source>
        <translation>{path} hat {st_size:.0f} MB: ein kleineres Bild speichern.</translation>
    </message>
    <message>
        <source>{path} takes more memory to read than there is: save a smaller picture.</source>
        <translation>{path} braucht zum Lesen mehr Speicher, als da ist: ein kleineres Bild speichern.</translation>
    </message>
    <message>
        <source>{pattern} is no hardware to begin with.</source>
        <translation>{pattern} ist keine Mechanik, mit der begonnen werden kann.</translation>
    </message>
    <message>
        <source>{percent} %</source>
        <translation>{percent} %</translation>
    </message>
    <message>
        <source>{pin} goes with the waste, and the template no longer finds its place on the slots.</source>
        <translation>{pin} geht mit dem Abfall fort, und die Schablone findet ihren Platz an den Schlitzen nicht mehr.</translation>
    </message>
    <message>
        <source>{pin} lies outside the template, so it cannot hold it: cut the template from a board as large as the blank, or move the pin.</source>
        <translation>{pin} liegt außerhalb der Schablone und kann sie nicht halten: die Schablone aus einem Brett so groß wie der Rohling schneiden oder den Stift versetzen.</translation>
    </message>
    <message>
        <source>{pitch} from tuner to tuner is too little for {words}: their plates and buttons need {least}.</source>
        <translation>{pitch} von Mechanik zu Mechanik sind zu wenig für {words}: Platten und Flügel brauchen {least}.</translation>
    </message>
    <message>
        <source>{pitch} from tuner to tuner makes a head nobody can hold: {most} is the most.</source>
        <translation>{pitch} von Mechanik zu Mechanik ergeben eine Kopfplatte, die niemand hält: höchstens {most}.</translation>
    </message>
    <message>
        <source>{places} and {n} more</source>
        <translation>{places} und {n} weitere</translation>
    </message>
    <message>
        <source>{printername} does not take {paper}: choose another paper for the sheets, or another printer.</source>
        <translation>{printername} nimmt {paper} nicht: ein anderes Papier für die Blätter oder einen anderen Drucker wählen.</translation>
    </message>
    <message>
        <source>{printername} takes no pages: look whether it is switched on and connected, or print to a file.</source>
        <translation>{printername} nimmt keine Seiten: prüfen, ob er eingeschaltet und verbunden ist, oder in eine Datei drucken.</translation>
    </message>
    <message>
        <source>{question} If it is a whole neck, cut the outline off at the nut line in the drawing first.</source>
        <translation>{question} Ist es ein ganzer Hals, zuerst in der Zeichnung den Umriss an der Sattellinie abschneiden.</translation>
    </message>
    <message>
        <source>{question}; give the unit: {sizes}.</source>
        <translation>{question}; die Einheit angeben: {sizes}.</translation>
    </message>
    <message>
        <source>{reach} of {depth}: </source>
        <translation>{reach} von {depth}: </translation>
    </message>
    <message>
        <source>{readout} seen from the face, {space}</source>
        <translation>{readout}, von vorn gesehen, {space}</translation>
    </message>
    <message>
        <source>{row}, number {number}</source>
        <translation>{row}, Nummer {number}</translation>
    </message>
    <message>
        <source>{scale} of full size</source>
        <translation>{scale} der Größe</translation>
    </message>
    <message>
        <source>{set_up} (continued)</source>
        <translation>{set_up} (Fortsetzung)</translation>
    </message>
    <message>
        <source>{setting:,.0f} turns a minute, rim {rim}</source>
        <translation>{setting:,.0f} Umdrehungen je Minute, Schnitt {rim}</translation>
    </message>
    <message>
        <source>{side} side, from {low} to {high} from the {line}</source>
        <translation>Seite {side}, von {low} bis {high} ab der {line}</translation>
    </message>
    <message>
        <source>{side} up</source>
        <translation>{side} oben</translation>
    </message>
    <message>
        <source>{side} up, nut to the left, {scale}; dashed heavy: go carefully</source>
        <translation>{side} oben, Sattel links, {scale}; dick gestrichelt: vorsichtig führen</translation>
    </message>
    <message>
        <source>{side}, from {begins} to {ends} deep: at the mouths of the side bores of {of} only {wall} of wall are left to rub on, and {contact} are wanted. Plug these bores flush with dowels before.</source>
        <translation>{side}, von {begins} bis {ends} tief: An den Mündungen der Seitenbohrungen von {of} bleiben nur {wall} Wand zum Anlaufen, {contact} sind gewünscht. Diese Bohrungen vorher mit Dübeln bündig verschließen.</translation>
    </message>
    <message>
        <source>{side}, from {begins} to {ends} deep: at the mouths of the side bores of {of} there is no wall to rub on. The follower sinks in by up to {sunk}, and the cutter cuts as much too far: plug these bores flush with dowels before.</source>
        <translation>{side}, von {begins} bis {ends} tief: An den Mündungen der Seitenbohrungen von {of} gibt es keine Wand zum Anlaufen. Was anläuft, sinkt bis zu {sunk} ein, und der Fräser schneidet ebenso viel zu weit: Diese Bohrungen vorher mit Dübeln bündig verschließen.</translation>
    </message>
    <message>
        <source>{side}, from {begins} to {ends} deep: the side bores of {of} are wider than the follower. It goes right into them, and the cutter with it: plug these bores flush with dowels before.</source>
        <translation>{side}, von {begins} bis {ends} tief: Die Seitenbohrungen von {of} sind weiter als das, was anläuft. Es gerät ganz hinein, und der Fräser mit: Diese Bohrungen vorher mit Dübeln bündig verschließen.</translation>
    </message>
    <message>
        <source>{size:.3f} mm at ({x:.2f}, {y:.2f})</source>
        <translation>{size:.3f} mm bei ({x:.2f}; {y:.2f})</translation>
    </message>
    <message>
        <source>{size:.4f} sq in</source>
        <translation>{size:.4f} Quadratzoll</translation>
    </message>
    <message>
        <source>{sizes}, measured square to the centreline; slanted by {slant}, the {side} end nearer the tip: {long} from end to end</source>
        <translation>{sizes}, quer zur Mittellinie gemessen; um {slant} schräg, das Ende auf der Seite {side} näher an der Spitze: {long} von Ende zu Ende</translation>
    </message>
    <message>
        <source>{size} in shank bearing</source>
        <comment>name of a feature</comment>
        <translation>{size} Zoll mit Ring am Schaft</translation>
    </message>
    <message>
        <source>{size} in straight</source>
        <comment>name of a feature</comment>
        <translation>{size} Zoll gerade</translation>
    </message>
    <message>
        <source>{size} in tip bearing</source>
        <comment>name of a feature</comment>
        <translation>{size} Zoll mit Ring an der Spitze</translation>
    </message>
    <message>
        <source>{size} mm ({size_in} inch)</source>
        <translation>{size} mm ({size_in} Zoll)</translation>
    </message>
    <message>
        <source>{size} shank bearing</source>
        <comment>name of a feature</comment>
        <translation>{size} mit Ring am Schaft</translation>
    </message>
    <message>
        <source>{size} straight</source>
        <comment>name of a feature</comment>
        <translation>{size} gerade</translation>
    </message>
    <message>
        <source>{size} tip bearing</source>
        <comment>name of a feature</comment>
        <translation>{size} mit Ring an der Spitze</translation>
    </message>
    <message>
        <source>{slots} are not of one depth: give them the same first.</source>
        <translation>{slots} sind nicht gleich tief: ihnen zuerst dieselbe Tiefe geben.</translation>
    </message>
    <message>
        <source>{slots} do not all overlap: move them together first.</source>
        <translation>{slots} überschneiden sich nicht alle: zuerst zusammenrücken.</translation>
    </message>
    <message>
        <source>{slots} shut in wood between them, which would fall out: they do not make one slot.</source>
        <translation>{slots} schließen zwischen sich Holz ein, das herausfiele: Daraus wird kein gemeinsamer Schlitz.</translation>
    </message>
    <message>
        <source>{slots}, each</source>
        <translation>{slots}, jeweils</translation>
    </message>
    <message>
        <source>{slot} from the face, {scale}</source>
        <translation>{slot} von vorn, {scale}</translation>
    </message>
    <message>
        <source>{slot} is cut at x {x0} mm to {x1} mm, y {y0} mm to {y1} mm (job book), and the drawing has it no more.</source>
        <translation>{slot} ist bei x {x0} mm bis {x1} mm, y {y0} mm bis {y1} mm ausgearbeitet (Werkbuch), und die Zeichnung hat ihn nicht mehr.</translation>
    </message>
    <message>
        <source>{slot} is cut up to {far} mm beyond the line that is drawn now, most at x {x} mm, y {y} mm (job book).</source>
        <translation>{slot} ist bis zu {far} mm über die Linie hinaus ausgearbeitet, die jetzt gezeichnet ist, am weitesten bei x {x} mm, y {y} mm (Werkbuch).</translation>
    </message>
    <message>
        <source>{slot} is cut up to {far} mm short of the line that is drawn now, most at x {x} mm, y {y} mm (job book).</source>
        <translation>{slot} ist bis zu {far} mm weniger weit ausgearbeitet als die Linie, die jetzt gezeichnet ist, am meisten bei x {x} mm, y {y} mm (Werkbuch).</translation>
    </message>
    <message>
        <source>{slot} is cut {was} (job book); the drawing now says {now}.</source>
        <translation>{slot} ist {was} ausgearbeitet (Werkbuch); die Zeichnung sagt jetzt {now}.</translation>
    </message>
    <message>
        <source>{slot} is there already and nothing is cut for it, so it has no ramp.</source>
        <translation>{slot} ist schon da, und dafür wird nichts geschnitten, also gibt es keine Rampe.</translation>
    </message>
    <message>
        <source>{slot} is too narrow to drill the waste out: {width}.</source>
        <translation>{slot} ist zu schmal zum Ausbohren: {width}.</translation>
    </message>
    <message>
        <source>{slot}: step {step}.</source>
        <translation>{slot}: Schritt {step}.</translation>
    </message>
    <message>
        <source>{slot}: steps {steps}.</source>
        <translation>{slot}: Schritte {steps}.</translation>
    </message>
    <message>
        <source>{sort} of {name}</source>
        <translation>{sort} von {name}</translation>
    </message>
    <message>
        <source>{spoiling}, {tight} tight, {notes}.</source>
        <translation>{spoiling}, {tight} knapp, {notes}.</translation>
    </message>
    <message>
        <source>{steps} of at most {most} ways of serving the posts tried</source>
        <translation>{steps} von höchstens {most} Wegen versucht, die Wellen zu belegen</translation>
    </message>
    <message>
        <source>{steps} · {holes} · {set_ups} · {tilts}
about {hours:.1f} hours, {changes:.1f} of them setting up</source>
        <translation>{steps} · {holes} · {set_ups} · {tilts}
etwa {hours:.1f} Stunden, davon {changes:.1f} zum Rüsten</translation>
    </message>
    <message>
        <source>{step} is cut {was} (job book); with the bits chosen now it is to be cut {now}.</source>
        <translation>{step} ist {was} geschnitten (Werkbuch); mit den jetzt gewählten Fräsern soll es {now} werden.</translation>
    </message>
    <message>
        <source>{stop} deep</source>
        <translation>{stop} tief</translation>
    </message>
    <message>
        <source>{stop} to full diameter</source>
        <translation>{stop} bis voller Ø</translation>
    </message>
    <message>
        <source>{stop} to the point</source>
        <translation>{stop} bis zur Spitze</translation>
    </message>
    <message>
        <source>{stop}, point {point}</source>
        <translation>{stop}, Spitze {point}</translation>
    </message>
    <message>
        <source>{strings} strings cannot all stand in pairs: add one, or pair those that do.</source>
        <translation>{strings} Saiten können nicht alle paarweise stehen: eine hinzufügen, oder nur die paaren, die es sollen.</translation>
    </message>
    <message>
        <source>{strings} strings cannot stand in pairs: give the {side} side one more.</source>
        <translation>{strings} Saiten lassen sich nicht paaren: auf der Seite {side} eine mehr angeben.</translation>
    </message>
    <message>
        <source>{strings} strings on a nut {nut_width} wide stand too close: it takes {least}.</source>
        <translation>{strings} Saiten auf einem {nut_width} breiten Sattel stehen zu eng: nötig sind {least}.</translation>
    </message>
    <message>
        <source>{text} (seen to)</source>
        <translation>{text} (erledigt)</translation>
    </message>
    <message>
        <source>{text} divides by zero.</source>
        <translation>{text} teilt durch null.</translation>
    </message>
    <message>
        <source>{text} is far too long for a headstock.</source>
        <translation>{text} ist viel zu lang für eine Kopfplatte.</translation>
    </message>
    <message>
        <source>{text} is no number: type how many times as long your work takes, for example 1.2.</source>
        <translation>{text} ist keine Zahl: eingeben, wie viel Mal so lange Ihre Arbeit dauert, zum Beispiel 1,2.</translation>
    </message>
    <message>
        <source>{text} is not a length: write for example 12.5, 12 mm, 1/2" or 1 5/8" + 2 mm.</source>
        <translation>{text} ist keine Länge: zum Beispiel 12,5 oder 12 mm oder 1/2" oder 1 5/8" + 2 mm schreiben.</translation>
    </message>
    <message>
        <source>{text} is not a number of parts: write for example 12.</source>
        <translation>{text} ist keine Stückzahl: zum Beispiel 12 schreiben.</translation>
    </message>
    <message>
        <source>{text} is not a number of turns a minute: write for example 16000.</source>
        <translation>{text} ist keine Drehzahl: zum Beispiel 16000 schreiben.</translation>
    </message>
    <message>
        <source>{text} is not a percentage: write for example 0.2 %.</source>
        <translation>{text} ist kein Prozentwert: zum Beispiel 0,2 % schreiben.</translation>
    </message>
    <message>
        <source>{text} is not a time: write minutes, for example 25, or 1:30, or 1.5 h.</source>
        <translation>{text} ist keine Zeit: Minuten schreiben, zum Beispiel 25, oder 1:30, oder 1,5 h.</translation>
    </message>
    <message>
        <source>{text} is not an amount of money: write for example 12.50 or 12,50.</source>
        <translation>{text} ist kein Geldbetrag: zum Beispiel 12,50 schreiben.</translation>
    </message>
    <message>
        <source>{text} is not an angle: write degrees, for example 14.5.</source>
        <translation>{text} ist kein Winkel: Grad schreiben, zum Beispiel 14,5.</translation>
    </message>
    <message>
        <source>{text} is not understood here: type a length, or two with a semicolon between them.</source>
        <translation>{text} wird hier nicht verstanden: eine Länge eingeben oder zwei mit Strichpunkt dazwischen.</translation>
    </message>
    <message>
        <source>{text} may be one number or two: part two by a semicolon, and write one with a point, as 12.7, or without thousands set apart, as 16000.</source>
        <translation>{text} kann eine Zahl sein oder zwei: zwei mit einem Strichpunkt trennen, eine allein mit Punkt schreiben, etwa 12.7, oder ohne Trennung der Tausender, etwa 16000.</translation>
    </message>
    <message>
        <source>{text} may be read two ways: write {whole}{part} or {whole}.{part}0.</source>
        <translation>{text} lässt sich auf zwei Arten lesen: {whole}{part} oder {whole},{part}0 schreiben.</translation>
    </message>
    <message>
        <source>{text} turns round and round: write degrees, for example 14.5.</source>
        <translation>{text} dreht sich im Kreis: Grad eingeben, zum Beispiel 14,5.</translation>
    </message>
    <message>
        <source>{thing} sits here already: press elsewhere, or Esc and press {thing} to move it.</source>
        <translation>Hier sitzt schon {thing}: woanders klicken, oder Esc, und {thing} zum Verschieben ziehen.</translation>
    </message>
    <message>
        <source>{tilt} {end} raised</source>
        <translation>{tilt} {end} hoch</translation>
    </message>
    <message>
        <source>{tilt}, {end} end raised</source>
        <translation>{tilt}, {end} hoch</translation>
    </message>
    <message>
        <source>{times}, {hours:.1f} h in all</source>
        <translation>{times}, zusammen {hours:.1f} h</translation>
    </message>
    <message>
        <source>{tip} from the {line} to the tip, {behind} behind it</source>
        <translation>{tip} von der {line} bis zur Spitze, {behind} dahinter</translation>
    </message>
    <message>
        <source>{tip} from the {line} to the tip; the neck goes on behind the nut line</source>
        <translation>{tip} von der {line} bis zur Spitze; hinter der Sattellinie geht der Hals weiter</translation>
    </message>
    <message>
        <source>{title} (continued)</source>
        <translation>{title} (Fortsetzung)</translation>
    </message>
    <message>
        <source>{title} (cut otherwise)</source>
        <translation>{title} (anders ausgearbeitet)</translation>
    </message>
    <message>
        <source>{title} (drawn otherwise now)</source>
        <translation>{title} (jetzt anders gezeichnet)</translation>
    </message>
    <message>
        <source>{title} (drilled otherwise)</source>
        <translation>{title} (anders gebohrt)</translation>
    </message>
    <message>
        <source>{title} comes {n} times in the order.</source>
        <translation>{title} kommt {n}-mal in der Folge vor.</translation>
    </message>
    <message>
        <source>{title} has left the running order: there is nothing to time.</source>
        <translation>{title} ist nicht mehr in der Folge: Es gibt nichts zu stoppen.</translation>
    </message>
    <message>
        <source>{title} is done</source>
        <translation>{title} ist erledigt</translation>
    </message>
    <message>
        <source>{title} is done and keeps its number.</source>
        <translation>{title} ist erledigt und behält seine Nummer.</translation>
    </message>
    <message>
        <source>{title} is left out of the order.</source>
        <translation>{title} fehlt in der Folge.</translation>
    </message>
    <message>
        <source>{title} is not done</source>
        <translation>{title} ist nicht erledigt</translation>
    </message>
    <message>
        <source>{title} needs no tick: the steps that are ticked off have taken all of its wood.</source>
        <translation>{title} braucht kein Häkchen: Die abgehakten Schritte haben sein Holz schon ganz weggenommen.</translation>
    </message>
    <message>
        <source>{title} – no bit does it</source>
        <translation>{title} – kein Fräser schafft es</translation>
    </message>
    <message>
        <source>{title}, its corners</source>
        <translation>{title}, seine Ecken</translation>
    </message>
    <message>
        <source>{title}, row {row} of {rows} from the nut, column {column} of {columns} from the left</source>
        <translation>{title}, Reihe {row} von {rows} ab dem Sattel, Spalte {column} von {columns} von links</translation>
    </message>
    <message>
        <source>{title}, to {deep}</source>
        <translation>{title}, bis {deep}</translation>
    </message>
    <message>
        <source>{title}, {row} of {rows} from the nut</source>
        <translation>{title}, {row} von {rows} ab dem Sattel</translation>
    </message>
    <message>
        <source>{title}: plus or minus {half_width} (95 times in 100 the truth lies from {low} to {high}), from {readings}; the layout holds {held}.</source>
        <translation>{title}: plus oder minus {half_width} (95-mal von 100 liegt die Wahrheit zwischen {low} und {high}), aus {readings}; der Entwurf hat {held}.</translation>
    </message>
    <message>
        <source>{title}: {name}, 1 unit = 1 mm</source>
        <translation>{title}: {name}, 1 Einheit = 1 mm</translation>
    </message>
    <message>
        <source>{told} (at {place})</source>
        <translation>{told} (bei {place})</translation>
    </message>
    <message>
        <source>{told} A shadow that falls beside the head was left out: if that is wood, shift the level of grey.</source>
        <translation>{told} Ein Schatten neben der Kopfplatte wurde ausgelassen: Ist es Holz, den Grauwert verschieben.</translation>
    </message>
    <message>
        <source>{told} A thin rim in another colour was taken along as a binding: shift the level of grey where it is none.</source>
        <translation>{told} Ein schmaler Rand in anderer Farbe wurde als Einfassung mitgenommen: Wo keine ist, den Grauwert verschieben.</translation>
    </message>
    <message>
        <source>{told} Choose that as its unit if it was drawn so.</source>
        <translation>{told} Das als Einheit wählen, wenn sie so gezeichnet ist.</translation>
    </message>
    <message>
        <source>{told} Give --scale {scale} if it was drawn so.</source>
        <translation>{told} --scale {scale} angeben, wenn sie so gezeichnet ist.</translation>
    </message>
    <message>
        <source>{told} Or close wider gaps here.</source>
        <translation>{told} Oder hier größere Lücken schließen.</translation>
    </message>
    <message>
        <source>{told} The head is drawn in a line about {width} wide: the middle of the line was taken. Where a line across the head cuts it short, press nearer the tip.</source>
        <translation>{told} Die Kopfplatte ist mit einer etwa {width} breiten Linie gezeichnet: Die Mitte der Linie wurde genommen. Wo eine Linie quer über die Kopfplatte sie zu kurz macht, näher an der Spitze drücken.</translation>
    </message>
    <message>
        <source>{tuner} (card {card})</source>
        <translation>{tuner} (Karte {card})</translation>
    </message>
    <message>
        <source>{turned} with the blank turned over</source>
        <translation>{turned} mit gewendetem Rohling</translation>
    </message>
    <message>
        <source>{turns:,.0f} turns a minute</source>
        <translation>{turns:,.0f} Umdrehungen je Minute</translation>
    </message>
    <message>
        <source>{unit_words} and degrees. x, y, z: the mark on the square blank. stop: drill depth from the mark to full diameter.</source>
        <translation>{unit_words} und Grad. x, y, z: der Anriss auf dem geraden Rohling. Bohrtiefe: vom Anriss bis zum vollen Durchmesser.</translation>
    </message>
    <message>
        <source>{up}, {follower}{only}: from {begins} to {ends} deep, the bit set {below} below the base, {contact} of the {what} rubbing {on}.</source>
        <translation>{up}, {follower}{only}: von {begins} bis {ends} Tiefe, der Fräser {below} unter der Fußplatte, {contact} liegen an ({what}, {on}).</translation>
    </message>
    <message>
        <source>{up}, {guide}: rout the corners of {what} with {bit} to {deep} {steps}.</source>
        <translation>{up}, {guide}: Ecken fräsen, {what}, mit {bit} bis {deep} {steps}.</translation>
    </message>
    <message>
        <source>{up}, {guide}: rout {what} with {bit} to {deep} {steps}.</source>
        <translation>{up}, {guide}: {what} mit {bit} bis {deep} {steps} fräsen.</translation>
    </message>
    <message>
        <source>{user} uses the hardware {id}: give its tuners other hardware first.</source>
        <translation>{user} verwendet die Mechanik {id}: zuerst auf andere umstellen.</translation>
    </message>
    <message>
        <source>{what} (Alt+{number})</source>
        <translation>{what} (Alt+{number})</translation>
    </message>
    <message>
        <source>{what} is drilled {was} (job book); the drawing now says {now}.</source>
        <translation>{what} ist {was} gebohrt (Werkbuch); die Zeichnung sagt jetzt {now}.</translation>
    </message>
    <message>
        <source>{what} rubs {contact} on the {rubs_on}</source>
        <translation>{what} liegt {contact} an: {rubs_on}</translation>
    </message>
    <message>
        <source>{why} What was in hand is put back.</source>
        <translation>{why} Was in der Hand war, ist zurückgelegt.</translation>
    </message>
    <message>
        <source>{wide} wide, {deep} deep</source>
        <translation>{wide} weit, {deep} tief</translation>
    </message>
    <message>
        <source>{width} wide, {height} high, {spread} from the first string to the last</source>
        <translation>{width} breit, {height} hoch, {spread} von der ersten Saite zur letzten</translation>
    </message>
    <message>
        <source>{wrap} wide, folds round both edges</source>
        <translation>{wrap} breit, um beide Kanten gefaltet</translation>
    </message>
    <message>
        <source>{x} across, {y} along</source>
        <translation>{x} quer, {y} längs</translation>
    </message>
    <message>
        <source>{z} mm below the face</source>
        <translation>{z} mm unter der Vorderseite</translation>
    </message>
    <message>
        <source>±{far} in {length}</source>
        <translation>±{far} auf {length}</translation>
    </message>
    <message>
        <source>“{name}” was not saved when the program ended.</source>
        <translation>„{name}“ war beim Ende des Programms nicht gespeichert.</translation>
    </message>
    <message>
        <source>“{text}” cannot be: this measure is above zero.</source>
        <translation>„{text}“ kann nicht sein: dieses Maß liegt über null.</translation>
    </message>
    <message>
        <source>“{title}”</source>
        <translation>„{title}“</translation>
    </message>
</context>
</TS>
