namespace Clothwright.Interchange.Tests.Wif;

/// <summary>A file that holds something of everything, as our writer would write it.</summary>
internal static class WifFull
{
    public const string Text = """
        [WIF]
        Version=1.1
        Date=April 20, 1997
        Developers=somebody
        Source Program=Saltings
        Source Version=3
        Tide=low

        [CONTENTS]
        COLOR PALETTE=true
        WARP SYMBOL PALETTE=true
        WEFT SYMBOL PALETTE=true
        TEXT=true
        WEAVING=true
        WARP=true
        WEFT=true
        NOTES=true
        TIEUP=true
        THREADING=true
        TREADLING=true
        LIFTPLAN=true
        COLOR TABLE=true
        WARP COLORS=true
        WEFT COLORS=true
        WARP SPACING=true
        WEFT SPACING=true
        WARP SPACING ZOOM=true
        WEFT SPACING ZOOM=true
        WARP THICKNESS=true
        WEFT THICKNESS=true
        WARP THICKNESS ZOOM=true
        WEFT THICKNESS ZOOM=true
        WARP SYMBOLS=true
        WEFT SYMBOLS=true
        WARP SYMBOL TABLE=true
        WEFT SYMBOL TABLE=true
        BITMAP IMAGE=true
        BITMAP FILE=true
        PRIVATE Saltings THREADING=true
        STRANGE THING=true
        PRIVATE Marsh threading=true

        [COLOR PALETTE]
        Entries=4
        Form=RGB
        Range=0,255

        [WARP SYMBOL PALETTE]
        Entries=2

        [WEFT SYMBOL PALETTE]
        Entries=1

        [TEXT]
        Title=Ebb = flow; [spring tide]
        Author=The studio
        Address=At the ford
        EMail=studio@example.org
        Telephone=0
        FAX=1

        [WEAVING]
        Shafts=4
        Treadles=4
        Rising Shed=true
        Loom=table

        [WARP]
        Threads=4
        Color=1
        Symbol=';'
        Symbol Number=1
        Units=Decipoints
        Spacing=30
        Thickness=20.5
        Spacing Zoom=2
        Thickness Zoom=3

        [WEFT]
        Threads=4
        Color=2
        Symbol='='
        Symbol Number=1
        Units=Inches
        Spacing=0.05
        Thickness=0.04
        Spacing Zoom=2
        Thickness Zoom=3

        [NOTES]
        1=First ; not a comment
        4=[fourth]
        9=

        [TIEUP]
        1=1,2
        2=2,3
        3=3,4
        4=1,4

        [THREADING]
        1=1
        2=2
        3=3
        4=4

        [TREADLING]
        1=1
        2=2
        3=3
        4=4

        [LIFTPLAN]
        1=1,2
        2=2,3
        3=3,4
        4=1,4

        [COLOR TABLE]
        1=59,122,120
        2=233,225,207
        3=0,0,0
        4=255,255,255

        [WARP COLORS]
        2=3

        [WEFT COLORS]
        3=4

        [WARP SPACING]
        4=36.5

        [WEFT SPACING]
        1=0.0625

        [WARP SPACING ZOOM]
        4=5

        [WEFT SPACING ZOOM]
        1=6

        [WARP THICKNESS]
        4=22

        [WEFT THICKNESS]
        1=0.03

        [WARP THICKNESS ZOOM]
        4=7

        [WEFT THICKNESS ZOOM]
        1=8

        [WARP SYMBOLS]
        2='#'

        [WEFT SYMBOLS]
        2=#64

        [WARP SYMBOL TABLE]
        1='*'
        2='+'

        [WEFT SYMBOL TABLE]
        1=';'

        [BITMAP IMAGE]
        width=2
        00 01 ; 02

        [BITMAP FILE]
        1=marsh.png

        [PRIVATE Saltings THREADING]
        1=9
        ; a comment of theirs

          indented line without an equals sign

        [STRANGE THING]
        any = thing

        [PRIVATE Marsh threading]
        1=2=3

        """;
}
