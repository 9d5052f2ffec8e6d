<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>BeltsModel</name>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchPage</name>
    <message numerus="yes">
        <source>The rest is too narrow for %n tickets that wait; plan what is missing in Orders.</source>
        <translation>
            <numerusform>The rest is too narrow for %n ticket that waits; plan what is missing in Orders.</numerusform>
            <numerusform>The rest is too narrow for %n tickets that wait; plan what is missing in Orders.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BookPart</name>
    <message numerus="yes">
        <source>The book disagrees in %n places.</source>
        <translation>
            <numerusform>The book disagrees in %n place.</numerusform>
            <numerusform>The book disagrees in %n places.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ChoiceWords</name>
    <message numerus="yes">
        <source>%n teeth</source>
        <translation>
            <numerusform>%n tooth</numerusform>
            <numerusform>%n teeth</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CounterPage</name>
    <message numerus="yes">
        <source>Delivery takes about %n days.</source>
        <translation>
            <numerusform>Delivery takes about one day.</numerusform>
            <numerusform>Delivery takes about %n days.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MissingDialog</name>
    <message numerus="yes">
        <source>%n pieces were not seen and will be missing. Close?</source>
        <translation>
            <numerusform>%n piece was not seen and will be missing. Close?</numerusform>
            <numerusform>%n pieces were not seen and will be missing. Close?</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>OrderDialog</name>
    <message numerus="yes">
        <source>%n lines still want belts that are not here.</source>
        <translation>
            <numerusform>%n line still wants belts that are not here.</numerusform>
            <numerusform>%n lines still want belts that are not here.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Order %1 is cancelled; %n belts go to the shelf, their labels are made.</source>
        <translation>
            <numerusform>Order %1 is cancelled; %n belt goes to the shelf, its label is made.</numerusform>
            <numerusform>Order %1 is cancelled; %n belts go to the shelf, their labels are made.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n belts that were cut already go to the shelf, their labels are made.</source>
        <translation>
            <numerusform>%n belt that was cut already goes to the shelf, its label is made.</numerusform>
            <numerusform>%n belts that were cut already go to the shelf, their labels are made.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>OrdersDialog</name>
    <message numerus="yes">
        <source>%n orders are handed over.</source>
        <translation>
            <numerusform>%n order is handed over.</numerusform>
            <numerusform>%n orders are handed over.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message numerus="yes">
        <source>not here; delivery takes about %n days</source>
        <translation>
            <numerusform>not here; delivery takes about one day</numerusform>
            <numerusform>not here; delivery takes about %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PieceView</name>
    <message numerus="yes">
        <source>%n days old</source>
        <translation>
            <numerusform>%n day old</numerusform>
            <numerusform>%n days old</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PriceWords</name>
    <message numerus="yes">
        <source>%n cuts at %1</source>
        <translation>
            <numerusform>%n cut at %1</numerusform>
            <numerusform>%n cuts at %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RackPage</name>
    <message numerus="yes">
        <source>%1 of %Ln pieces</source>
        <translation>
            <numerusform>%1 of %Ln piece</numerusform>
            <numerusform>%1 of %Ln pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln pieces</source>
        <translation>
            <numerusform>%Ln piece</numerusform>
            <numerusform>%Ln pieces</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StatusLine</name>
    <message numerus="yes">
        <source> · %Ln movements</source>
        <translation>
            <numerusform> · %Ln movement</numerusform>
            <numerusform> · %Ln movements</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>· %Ln pieces on the rack</source>
        <translation>
            <numerusform>· %Ln piece on the rack</numerusform>
            <numerusform>· %Ln pieces on the rack</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The ledger disagrees in %n places</source>
        <translation>
            <numerusform>The ledger disagrees in %n place</numerusform>
            <numerusform>The ledger disagrees in %n places</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SuggestionCard</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TogetherDialog</name>
    <message numerus="yes">
        <source>%n mountings less. The one ticket for all of them is in %1.</source>
        <translation>
            <numerusform>%n mounting less. The one ticket for all of them is in %1.</numerusform>
            <numerusform>%n mountings less. The one ticket for all of them is in %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TogetherModel</name>
    <message numerus="yes">
        <source>%n mountings</source>
        <translation>
            <numerusform>%n mounting</numerusform>
            <numerusform>%n mountings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TrialView</name>
    <message numerus="yes">
        <source>%1, %n orders.</source>
        <translation>
            <numerusform>%1, %n order.</numerusform>
            <numerusform>%1, %n orders.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>UnderstoodStrip</name>
    <message numerus="yes">
        <source>%n belts</source>
        <translation>
            <numerusform>%n belt</numerusform>
            <numerusform>%n belts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n teeth</source>
        <translation>
            <numerusform>%n tooth</numerusform>
            <numerusform>%n teeth</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WayWords</name>
    <message numerus="yes">
        <source>Take %n ready belts</source>
        <translation>
            <numerusform>Take %n ready belt</numerusform>
            <numerusform>Take %n ready belts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut from %n pieces</source>
        <translation>
            <numerusform>Cut from %n piece</numerusform>
            <numerusform>Cut from %n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>on the rack %n days</source>
        <translation>
            <numerusform>on the rack %n day</numerusform>
            <numerusform>on the rack %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>came %n days ago</source>
        <translation>
            <numerusform>came one day ago</numerusform>
            <numerusform>came %n days ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>counted %n days ago</source>
        <translation>
            <numerusform>counted one day ago</numerusform>
            <numerusform>counted %n days ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mountings</source>
        <translation>
            <numerusform>%n mounting</numerusform>
            <numerusform>%n mountings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n belts</source>
        <translation>
            <numerusform>%n belt</numerusform>
            <numerusform>%n belts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n ribs</source>
        <translation>
            <numerusform>%n rib</numerusform>
            <numerusform>%n ribs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n teeth in mesh</source>
        <translation>
            <numerusform>%n tooth in mesh</numerusform>
            <numerusform>%n teeth in mesh</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: worth table %2, from %n orders</source>
        <translation>
            <numerusform>%1: worth table %2, from %n order</numerusform>
            <numerusform>%1: worth table %2, from %n orders</numerusform>
        </translation>
    </message>
</context>
</TS>
