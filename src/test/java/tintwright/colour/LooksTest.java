package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a person would call a colour, against the colours that an open standard gives names to. */
class LooksTest {
    /** A word, and colours that have it in their name: CSS Color Module Level 4, W3C, 6.1 (values from memory). */
    private static final String[][] NAMED = {
        {"white", "white ffffff", "ghostwhite f8f8ff", "whitesmoke f5f5f5", "floralwhite fffaf0"},
        {"black", "black 000000"},
        {
            "grey",
            "dimgrey 696969",
            "grey 808080",
            "darkgrey a9a9a9",
            "lightgrey d3d3d3",
            "darkslategrey 2f4f4f",
            "slategrey 708090",
            "lightslategrey 778899"
        },
        {"light grey", "lightgrey d3d3d3"},
        {"cream", "ivory fffff0", "beige f5f5dc", "linen faf0e6", "oldlace fdf5e6"},
        {"red", "red ff0000", "darkred 8b0000", "indianred cd5c5c", "mediumvioletred c71585"},
        {"brown", "brown a52a2a", "saddlebrown 8b4513"},
        {"pink", "pink ffc0cb", "lightpink ffb6c1", "hotpink ff69b4"},
        {"orange", "orange ffa500", "darkorange ff8c00"},
        {"yellow", "yellow ffff00", "yellowgreen 9acd32", "greenyellow adff2f"},
        {"olive", "olive 808000"},
        {
            "green",
            "green 008000",
            "darkgreen 006400",
            "lightgreen 90ee90",
            "palegreen 98fb98",
            "forestgreen 228b22",
            "limegreen 32cd32",
            "seagreen 2e8b57",
            "mediumseagreen 3cb371",
            "lightseagreen 20b2aa",
            "springgreen 00ff7f",
            "yellowgreen 9acd32",
            "darkseagreen 8fbc8f",
            "greenyellow adff2f",
            "lawngreen 7cfc00",
            "darkolivegreen 556b2f"
        },
        {"turquoise", "turquoise 40e0d0", "mediumturquoise 48d1cc", "darkturquoise 00ced1", "paleturquoise afeeee"},
        {
            "blue",
            "blue 0000ff",
            "darkblue 00008b",
            "mediumblue 0000cd",
            "navy 000080",
            "midnightblue 191970",
            "royalblue 4169e1",
            "cornflowerblue 6495ed",
            "dodgerblue 1e90ff",
            "deepskyblue 00bfff",
            "skyblue 87ceeb",
            "lightskyblue 87cefa",
            "lightblue add8e6",
            "powderblue b0e0e6",
            "steelblue 4682b4",
            "lightsteelblue b0c4de",
            "cadetblue 5f9ea0",
            "slateblue 6a5acd",
            "darkslateblue 483d8b"
        },
        {"violet", "violet ee82ee", "darkviolet 9400d3", "blueviolet 8a2be2"},
        {"dark", "darkred 8b0000", "darkblue 00008b", "darkslategrey 2f4f4f"},
        {
            "light",
            "lightgrey d3d3d3",
            "lightgreen 90ee90",
            "lightblue add8e6",
            "lightpink ffb6c1",
            "lightskyblue 87cefa",
            "lightsteelblue b0c4de"
        },
        {"strong", "red ff0000", "blue 0000ff", "yellow ffff00", "green 008000"},
        {"greyish", "darkslategrey 2f4f4f", "slategrey 708090", "lightslategrey 778899"},
    };

    private static String looks(String hex) {
        int code = Integer.parseInt(hex, 16);
        return Looks.of(RgbSpace.SRGB.decode((code >> 16) / 255.0, (code >> 8 & 255) / 255.0, (code & 255) / 255.0));
    }

    @Test
    void namesColoursAsTheStandardDoes() {
        List<String> otherwise = new ArrayList<>();
        for (String[] row : NAMED) {
            for (int i = 1; i < row.length; i++) {
                String[] named = row[i].split(" ");
                if (!looks(named[1]).contains(row[0])) {
                    otherwise.add(named[0] + " is \"" + looks(named[1]) + "\", without " + row[0]);
                }
            }
        }
        assertEquals(List.of(), otherwise);
    }

    @Test
    void saysOfAGreyWhichWayItLeans() {
        assertEquals("warm white", Looks.of(new Lab(93, 0, 3, Viewing.D65_10)));
        assertEquals("cool grey", Looks.of(new Lab(60, 0, -3, Viewing.D65_10)));
        assertEquals("dark grey", Looks.of(new Lab(30, 0, 0, Viewing.D65_10)));
        assertEquals("off-white, cream", Looks.of(new Lab(91, 0.5, 8, Viewing.D65_10)));
        assertTrue(Looks.of(new Lab(60, 0, 20, Viewing.D65_10)).startsWith("sand"));
    }
}
