package stokewell.web;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.NoSuchElementException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import stokewell.cli.PageAsking;
import stokewell.file.UnitSystem;

/** A real browser before a server of its own, with a person's words for what he does in it. */
final class Browser implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(40);
    /** For work that takes minutes where the machine has other work as well. */
    private static final Duration LONG_PATIENCE = Duration.ofMinutes(6);

    private static final List<String> FLAGS = List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--disable-dev-shm-usage",
            "--hide-scrollbars");

    final ChromeDriver driver;
    private Path folder;
    private final StringWriter errors = new StringWriter();
    private WebServer server;

    private Browser(Path folder) {
        this.folder = folder;
        serve(0);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program("CHROMIUM", "chromium"));
        options.addArguments(FLAGS);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(new File(program("CHROMEDRIVER", "chromedriver")))
                .usingAnyFreePort()
                .build();
        driver = new ChromeDriver(service, options);
        wide(1200, 900, false);
        downloads();
    }

    /** @param folder where the rigs lie and downloads go */
    static Browser start(Path folder) {
        return new Browser(folder);
    }

    private static String program(String variable, String name) {
        String named = System.getenv(variable);
        if (named != null) return named;
        for (String place : System.getenv("PATH").split(File.pathSeparator, -1)) {
            Path file = Path.of(place, name);
            if (Files.isExecutable(file)) return file.toString();
        }
        throw new IllegalStateException("The tests of the page need " + name + ": ./test puts it in place, or set "
                + variable + " to where it is.");
    }

    private void serve(int port) {
        server = WebServer.start(
                new WebServer.Start(folder, null, port, false, UnitSystem.SI, new PrintWriter(errors)),
                new PageAsking());
    }

    private void downloads() {
        driver.executeCdpCommand(
                "Browser.setDownloadBehavior", Map.of("behavior", "allow", "downloadPath", folder.toString()));
    }

    /** Another folder and a server of its own, as if nothing had been before. */
    void anew(Path other) {
        server.close();
        folder = other;
        errors.getBuffer().setLength(0);
        serve(0);
        driver.get("about:blank");
        downloads();
    }

    /** Ends the server and starts another on the same port. */
    void restart() {
        int port = server.port();
        server.close();
        serve(port);
    }

    void stopServer() {
        server.close();
    }

    String origin() {
        return "http://127.0.0.1:" + server.port();
    }

    /** What the server had to say on its terminal. */
    String errors() {
        return errors.toString();
    }

    /** Comes in by the address that the server tells. */
    Browser enter() {
        driver.get(server.address());
        return this;
    }

    /** Goes to a place as a person does who follows a link; loads the page where it is not there yet. */
    void turnTo(String place) {
        if (driver.getCurrentUrl().startsWith(origin() + "/")) js("location.hash = '" + place + "'");
        else at(place);
    }

    Browser at(String place) {
        driver.get("about:blank");
        driver.get(origin() + "/#" + place);
        return this;
    }

    void wide(int width, int height, boolean phone) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", phone));
    }

    void media(String feature, String value) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", feature, "value", value))));
    }

    /** Waits until something is true of the page. */
    void until(String what, BooleanSupplier true_) {
        until(what, PATIENCE, true_);
    }

    /** The same for long work. */
    void untilDone(String what, BooleanSupplier true_) {
        until(what, LONG_PATIENCE, true_);
    }

    private void until(String what, Duration patience, BooleanSupplier true_) {
        long end = System.nanoTime() + patience.toNanos();
        while (true) {
            try {
                if (true_.getAsBoolean()) return;
            } catch (StaleElementReferenceException | NoSuchElementException | JavascriptException e) {
                // it was just drawn again
            }
            if (System.nanoTime() > end)
                throw new AssertionError("never came: " + what + "\nThe page says:\n" + text("body") + "\n" + errors);
            try {
                Thread.sleep(40);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    WebElement see(String css) {
        until(css, () -> !driver.findElements(By.cssSelector(css)).isEmpty());
        return driver.findElement(By.cssSelector(css));
    }

    boolean has(String css) {
        return !driver.findElements(By.cssSelector(css)).isEmpty();
    }

    int count(String css) {
        return driver.findElements(By.cssSelector(css)).size();
    }

    String text(String css) {
        return driver.findElement(By.cssSelector(css)).getText();
    }

    void says(String words) {
        until("\"" + words + "\"", () -> text("body").contains(words));
    }

    /** A night stands on the page and nothing is under way. */
    void settled() {
        until("the night", () -> has(".big dd") && !has(".busy"));
    }

    /** Presses the button of that name. */
    void press(String name) {
        until("a button " + name, () -> {
            for (WebElement button : driver.findElements(By.cssSelector("button, summary, nav a"))) {
                boolean named = name.equals(button.getDomAttribute("aria-label"))
                        || button.getText().strip().equals(name);
                if (!named || !button.isEnabled()) continue;
                driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
                button.click();
                return true;
            }
            return false;
        });
    }

    /** Presses one button and, the moment it is there, another that may soon be gone: the page itself does, no driver is as quick. */
    void press(String name, String next) {
        driver.executeScript("""
                window.pressed = false;
                const watch = new MutationObserver(() => {
                  const button = [...document.querySelectorAll('button')]
                    .find(b => b.textContent.trim() === next && !b.disabled && b.getClientRects().length);
                  if (!button) return;
                  watch.disconnect();
                  window.pressed = true;
                  button.click();
                }), next = arguments[0];
                watch.observe(document.body, {subtree: true, childList: true});""", next);
        press(name);
        until("a button " + next, () -> Boolean.TRUE.equals(js("return window.pressed")));
    }

    /** Touches a part of the drawing. */
    void touch(String part) {
        see(".drawing [data-part='" + part + "']");
        driver.executeScript("document.querySelector(\".drawing [data-part='" + part
                + "']\").dispatchEvent(new MouseEvent('click', {bubbles: true}))");
    }

    /** The slider of that name. */
    WebElement slider(String name) {
        return see(".sheet input[type=range][aria-label='" + name + "']");
    }

    /** Moves a slider by so many steps as a hand does, and lets go. */
    void drag(String slider, int steps) {
        WebElement hand = slider(slider);
        driver.executeScript("""
                const hand = arguments[0], steps = arguments[1];
                for (let i = 0; i < Math.abs(steps); i++) {
                  hand.value = Number(hand.value) + Math.sign(steps) * Number(hand.step);
                  hand.dispatchEvent(new Event('input', {bubbles: true}));
                }
                hand.dispatchEvent(new Event('change', {bubbles: true}));""", hand, steps);
    }

    void key(Keys key) {
        new Actions(driver).sendKeys(key).perform();
    }

    void keys(Keys key, int times) {
        Actions hand = new Actions(driver);
        for (int i = 0; i < times; i++) hand.sendKeys(key);
        hand.perform();
    }

    void control(String letter) {
        new Actions(driver)
                .keyDown(Keys.CONTROL)
                .sendKeys(letter)
                .keyUp(Keys.CONTROL)
                .perform();
    }

    Object js(String script) {
        return driver.executeScript(script);
    }

    /** A file as the page's export gives it. */
    byte[] export(String form, Map<String, Object> ask) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(origin() + "/api/export/" + form))
                .header("X-Stokewell-Token", server.token())
                .header("X-Stokewell", "1")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofByteArray(Body.JSON.writeValueAsBytes(ask)))
                .build();
        HttpResponse<byte[]> answer = HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
        if (answer.statusCode() != 200) throw new IOException(form + ": " + answer.statusCode());
        return answer.body();
    }

    /** Whether anything reaches out of the page to the right. */
    boolean reachesOut() {
        return (Boolean) js("return document.documentElement.scrollWidth > window.innerWidth");
    }

    /** What the accessibility engine finds, one line each; empty where all is well. */
    String violations() throws IOException {
        try (InputStream axe = Browser.class.getResourceAsStream("/axe.min.js")) {
            driver.executeCdpCommand(
                    "Runtime.evaluate", Map.of("expression", new String(axe.readAllBytes(), StandardCharsets.UTF_8)));
        }
        return String.valueOf(driver.executeAsyncScript("""
                const done = arguments[0];
                axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}).then(found => done(found.violations
                  .map(v => v.id + ': ' + v.help + ' at ' + v.nodes.slice(0, 4).map(n => n.target.join(' ')).join(' | ')).join('\\n')));"""));
    }

    /** Pictures the whole page, or as much of it as is asked for. */
    void picture(Path file, int most) {
        Map<?, ?> size = (Map<?, ?>)
                driver.executeCdpCommand("Page.getLayoutMetrics", Map.of()).get("cssContentSize");
        double height = Math.min(most, ((Number) size.get("height")).doubleValue());
        Map<String, Object> clip = Map.of("x", 0, "y", 0, "width", size.get("width"), "height", height, "scale", 1);
        Map<String, Object> shot =
                driver.executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true, "clip", clip));
        try {
            Files.write(file, Base64.getDecoder().decode((String) shot.get("data")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
        server.close();
    }
}
