<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Pegwright</name>
    <message>
        <source>As the &amp;system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pegwright speaks the chosen language when it is started again.</source>
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
        <source>hole</source>
        <comment>term</comment>
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
</context>
</TS>
