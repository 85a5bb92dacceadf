package tintwright.phone;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import tintwright.bench.top.BenchTop;

/** From a request to its answer. */
final class Requests implements HttpHandler {
    /**
     * Everything comes from the bench itself, as files of their own, and forms go nowhere else (W3C, Content Security
     * Policy Level 3).
     */
    static final String POLICY = "default-src 'none'; style-src 'self'; script-src 'self'; font-src 'self';"
            + " connect-src 'self'; img-src data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final Gate gate;
    private final Passes passes;
    private final Live live;
    private final PhotoDoor photos;
    private final SaidTo said = new SaidTo(System::nanoTime);
    private final BenchTop top;
    private final Clock clock;

    Requests(Gate gate, Passes passes, BenchTop top, Path photos, Clock clock) {
        this.top = top;
        this.clock = clock;
        this.gate = gate;
        this.passes = passes;
        this.live = new Live(top);
        this.photos = new PhotoDoor(top, photos);
    }

    /** Ends every stream that waits. */
    void stop() {
        live.stop();
    }

    @Override
    public void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            headers(exchange.getResponseHeaders());
            Optional<Place> back = Optional.empty();
            try {
                Gate.Asked asked = gate.ask(exchange);
                back = asked.phone().flatMap(in -> Place.at(asked.page()));
                if (asked.phone().isPresent() && asked.page().equals("live") && !asked.post()) {
                    live.serve(exchange, () -> passes.phone(asked.pass()).isPresent());
                } else {
                    send(exchange, answer(exchange, asked));
                }
            } catch (Refused e) {
                send(exchange, e.reply(back));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } catch (RuntimeException e) {
                System.getLogger(Requests.class.getName()).log(System.Logger.Level.ERROR, "a page failed", e);
                send(
                        exchange,
                        Reply.refusal(
                                Reply.FAILED,
                                "That failed at the bench. Look there whether it was done; go on there.",
                                back));
            }
        }
    }

    private static void headers(Headers headers) {
        headers.set("Content-Security-Policy", POLICY);
        headers.set("X-Content-Type-Options", "nosniff");
        // With no-referrer a form would say that it comes from nowhere (Fetch, "append a request Origin header").
        headers.set("Referrer-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cache-Control", "no-store");
    }

    private Reply answer(HttpExchange exchange, Gate.Asked asked) throws Refused, IOException, InterruptedException {
        Optional<Reply> part = asked.post() ? Optional.empty() : Assets.named(asked.page());
        if (part.isPresent()) {
            return part.get();
        }
        if (asked.phone().isEmpty()) {
            return door(asked);
        }
        if (asked.page().isEmpty() && !asked.post()) {
            return Reply.to((top.sight().cup().isPresent() ? Place.DOSE : Place.PHOTO).path());
        }
        if (asked.page().equals("label") && !asked.post()) {
            return LogPage.label(top, exchange);
        }
        Place place = Place.at(asked.page()).orElseThrow(Gate::nothing);
        if (!asked.post()) {
            return page(place, exchange, said.of(asked.pass(), place));
        }
        BenchTop.Answer came = deed(place, exchange);
        if (came.recipe().isPresent()) {
            return Reply.to(LogPage.recipe(came.recipe().get()));
        }
        Place then = place.atTheFoot() || !came.done() && place == Place.EYE ? place : Place.DOSE;
        if (!came.said().isEmpty()) {
            said.keep(asked.pass(), then, came);
        }
        return Reply.to(then.path());
    }

    private Reply page(Place place, HttpExchange exchange, Optional<BenchTop.Answer> came) throws Refused {
        return switch (place) {
            case PHOTO -> photos.show(came);
            case DOSE -> DosePage.show(top.sight(), came);
            case DARK -> DosePage.ways(top.sight(), came);
            case EYE -> EyePage.show(top.sight(), came);
            case DAY -> DayPage.show(top.sight(), came, clock.instant());
            case LOG -> LogPage.show(top, came);
            case RECIPE -> LogPage.recipe(top, exchange);
        };
    }

    private BenchTop.Answer deed(Place place, HttpExchange exchange) throws Refused, IOException, InterruptedException {
        return switch (place) {
            case PHOTO -> photos.take(exchange);
            case DOSE -> DosePage.weighed(top, Form.of(exchange));
            case DARK -> DosePage.follow(top, Form.of(exchange));
            case EYE -> EyePage.looked(top, Form.of(exchange));
            case DAY -> DayPage.deed(top, Form.of(exchange));
            case LOG, RECIPE -> throw new Refused(Reply.METHOD_NOT_ALLOWED, "Nothing is written into the log here.");
        };
    }

    private Reply door(Gate.Asked asked) throws Refused {
        if (!asked.post() && asked.page().isEmpty()) {
            return Reply.page(Reply.OK, Html.door());
        }
        if (asked.post() && asked.page().equals("in")) {
            String pass = passes.admit(asked.pass())
                    .orElseThrow(() -> new Refused(
                            Reply.FORBIDDEN, "The code is used up, or too many phones are in. Scan the code anew."));
            return Reply.to("/" + pass + "/");
        }
        throw Gate.nothing();
    }

    private static void send(HttpExchange exchange, Reply reply) throws IOException {
        Headers headers = exchange.getResponseHeaders();
        headers.set("Content-Type", reply.type());
        for (Map.Entry<String, String> each : reply.headers().entrySet()) {
            headers.set(each.getKey(), each.getValue());
        }
        int length = exchange.getRequestMethod().equals("HEAD") ? 0 : reply.body().length;
        exchange.sendResponseHeaders(reply.status(), length == 0 ? -1 : length);
        if (length > 0) {
            exchange.getResponseBody().write(reply.body());
        }
    }
}
