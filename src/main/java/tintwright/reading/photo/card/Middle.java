package tintwright.reading.photo.card;

/** The middle one of many numbers without sorting them all: C. A. R. Hoare (1961), Algorithm 65, Comm. ACM 4, 321. */
final class Middle {
    private Middle() {}

    /**
     * @param values reordered here
     * @param count  how many of them count, from the start; at least 1
     * @return the one that would stand at {@code count / 2} in rising order
     */
    static double of(double[] values, int count) {
        int wanted = count / 2;
        int left = 0;
        int right = count - 1;
        while (left < right) {
            double pivot = middleOf(values[left], values[left + (right - left) / 2], values[right]);
            int i = left;
            int j = right;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double held = values[i];
                    values[i++] = values[j];
                    values[j--] = held;
                }
            }
            if (wanted <= j) {
                right = j;
            } else if (wanted >= i) {
                left = i;
            } else {
                return values[wanted];
            }
        }
        return values[wanted];
    }

    private static double middleOf(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
