package tintwright.files.instrument;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.files.FileProblem;
import tintwright.files.LabRange;
import tintwright.reading.ColourReading;
import tintwright.reading.Conditions;
import tintwright.reading.Covariance;
import tintwright.reading.NamedReading;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;

/**
 * Colour exchange files: objects with a reflectance spectrum or a CIELAB colour, and the specifications they
 * refer to. An object with both gives its spectrum.
 *
 * <p>Source: ISO 17972-1 (names of elements and attributes, from memory; the document was not at hand).
 */
final class CxfFile {
    /** What a ColorSpecification says. */
    private static final class Specification {
        private String light = "";
        private String observer = "";
        private Optional<Geometry> geometry = Optional.empty();
        private int firstNm;
        private int stepNm;
    }

    /** A measured object, as it stands in the file. */
    private static final class Sample {
        private String name = "";
        private long line;
        private double[] spectrum;
        private int firstNm;
        private String spectrumSpecification = "";
        private final Map<String, Double> lab = new HashMap<>();
        private String labSpecification = "";
    }

    private final String file;
    private final XMLStreamReader xml;
    private final Map<String, Specification> specifications = new HashMap<>();
    private final List<Sample> samples = new ArrayList<>();

    private CxfFile(String file, XMLStreamReader xml) {
        this.file = file;
        this.xml = xml;
    }

    static List<NamedReading> parse(String file, String text, Conditions unsaid) throws FileProblem {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        // A measurement has no business fetching anything.
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        try {
            CxfFile cxf = new CxfFile(file, factory.createXMLStreamReader(new StringReader(text)));
            cxf.collect();
            List<NamedReading> readings = new ArrayList<>();
            for (Sample sample : cxf.samples) {
                if (sample.spectrum != null || sample.lab.size() == 3) {
                    readings.add(new NamedReading(sample.name, cxf.reading(sample, unsaid)));
                }
            }
            return readings;
        } catch (XMLStreamException e) {
            String where =
                    e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNumber();
            throw FileProblem.unusable(file + where + ": this is not whole XML; export it again", e);
        }
    }

    private void collect() throws XMLStreamException, FileProblem {
        boolean root = true;
        while (xml.hasNext()) {
            if (xml.next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            String element = xml.getLocalName();
            if (root && !element.equals("CxF")) {
                throw FileProblem.unusable(file + ": XML of another kind (" + element
                        + "); export the measurements as CxF3, CGATS or CSV");
            }
            root = false;
            if (element.equals("Object")) {
                samples.add(sample());
            } else if (element.equals("ColorSpecification")) {
                specifications.put(attribute("Id"), specification());
            }
        }
    }

    private Sample sample() throws XMLStreamException, FileProblem {
        Sample sample = new Sample();
        sample.name = attribute("Name").isEmpty() ? attribute("Id") : attribute("Name");
        sample.line = xml.getLocation().getLineNumber();
        while (!ends("Object")) {
            if (xml.getEventType() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            if (xml.getLocalName().equals("ReflectanceSpectrum")) {
                sample.spectrumSpecification = attribute("ColorSpecification");
                String first = attribute("StartWL");
                sample.firstNm = first.isEmpty() ? 0 : (int) number(sample, first);
                sample.spectrum = numbers(sample, xml.getElementText());
            } else if (xml.getLocalName().equals("ColorCIELab")) {
                sample.labSpecification = attribute("ColorSpecification");
                while (!ends("ColorCIELab")) {
                    if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
                        sample.lab.put(xml.getLocalName(), number(sample, xml.getElementText()));
                    }
                }
            }
        }
        return sample;
    }

    private Specification specification() throws XMLStreamException {
        Specification said = new Specification();
        while (!ends("ColorSpecification")) {
            if (xml.getEventType() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            switch (xml.getLocalName()) {
                case "Illuminant" -> said.light = xml.getElementText();
                case "Observer" -> said.observer = xml.getElementText();
                case "SingleAngle", "SingleAngleConfiguration" ->
                    said.geometry = Optional.of(Geometry.SPECULAR_EXCLUDED);
                case "Sphere" -> said.geometry = sphere(attribute("SpecularIncluded"));
                case "SphereConfiguration" -> said.geometry = sphere(xml.getElementText());
                case "WavelengthRange" -> {
                    said.firstNm = whole(attribute("StartWL"));
                    said.stepNm = whole(attribute("Increment"));
                }
                default -> {
                    // Devices, dates and the like do not change the reading.
                }
            }
        }
        return said;
    }

    private static Optional<Geometry> sphere(String said) {
        return switch (said.strip().toLowerCase(java.util.Locale.ROOT)) {
            case "true", "d/8:i", "specular included", "specularincluded" -> Optional.of(Geometry.SPECULAR_INCLUDED);
            case "false", "d/8:e", "specular excluded", "specularexcluded" -> Optional.of(Geometry.SPECULAR_EXCLUDED);
            default -> Instruments.geometry(said);
        };
    }

    /** Moves on by one; true at the end of this element, and at the end of the file. */
    private boolean ends(String element) throws XMLStreamException {
        int event = xml.next();
        return event == XMLStreamConstants.END_DOCUMENT
                || event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals(element);
    }

    private String attribute(String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value.strip();
    }

    private static int whole(String text) {
        return text.matches("\\d{1,4}") ? Integer.parseInt(text) : 0;
    }

    private double number(Sample sample, String text) throws FileProblem {
        if (text.strip().matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,2})?")) {
            return Double.parseDouble(text.strip());
        }
        throw problem(sample, "must hold numbers such as 0.25, has \"" + text.strip() + "\"; correct it there");
    }

    private double[] numbers(Sample sample, String text) throws FileProblem {
        String[] words = text.strip().split("\\s+");
        double[] numbers = new double[words.length];
        for (int i = 0; i < words.length; i++) {
            numbers[i] = number(sample, words[i]);
        }
        return numbers;
    }

    private Reading reading(Sample sample, Conditions unsaid) throws FileProblem {
        boolean spectral = sample.spectrum != null;
        String id = spectral ? sample.spectrumSpecification : sample.labSpecification;
        Specification specification = specifications.getOrDefault(id, new Specification());
        Conditions said = unsaid.butFirst(
                Instruments.viewing(specification.light, specification.observer), specification.geometry);
        Geometry geometry = said.geometry()
                .orElseThrow(() ->
                        problem(sample, "whether the gloss is in the reading is not said; say it beside the file"));
        try {
            if (spectral) {
                int first = sample.firstNm > 0 ? sample.firstNm : specification.firstNm;
                if (first == 0 || specification.stepNm == 0) {
                    throw problem(sample, "its wavelengths are not said; export it with its specification");
                }
                Grid grid = new Grid(first, specification.stepNm, sample.spectrum.length);
                return LabRange.checked(
                        new SpectralReading(Spectrum.of(grid, sample.spectrum), said.noise(), geometry, said.film()));
            }
            double l = sample.lab.getOrDefault("L", Double.NaN);
            double a = sample.lab.getOrDefault("A", Double.NaN);
            double b = sample.lab.getOrDefault("B", Double.NaN);
            LabRange.check(l, a, b);
            Viewing viewing = said.viewing()
                    .orElseThrow(() -> problem(
                            sample, "the light and observer of its colour are not said; say them beside the file"));
            return new ColourReading(
                    new Lab(l, a, b, viewing), Covariance.same(said.sigma()), geometry, said.film(), Optional.empty());
        } catch (IllegalArgumentException e) {
            throw problem(sample, e.getMessage() + "; correct it there");
        }
    }

    private FileProblem problem(Sample sample, String what) {
        return FileProblem.unusable(file + ", line " + sample.line + ", object \"" + sample.name + "\": " + what);
    }
}
