package tintwright.bench.top;

import java.util.Collection;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names short enough to write on a cup with a marker: the place and a number, "port bow 3". */
public final class CupNames {
    private CupNames() {}

    /**
     * @param place what the cup is for
     * @param used  names of cups and of what was set aside, older ways of naming among them
     * @return the place with the number after the highest in use; "port bow 3 rest" uses 3
     */
    public static String next(String place, Collection<String> used) {
        Pattern numbered = Pattern.compile(
                Pattern.quote(place.strip()) + "\\s+(\\d{1,6})(?:\\s.*)?",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        int most = 0;
        for (String name : used) {
            Matcher matcher = numbered.matcher(name.strip());
            most = matcher.matches() ? Math.max(most, Integer.parseInt(matcher.group(1))) : most;
        }
        return place.strip() + " " + (most + 1);
    }
}
