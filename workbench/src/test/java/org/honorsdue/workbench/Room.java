package org.honorsdue.workbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import java.util.Base64;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.casebook.Casebook;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.reference.Reference;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.FluentWait;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A reading room of its own with a real browser in it. The browser is started once and serves every room. */
final class Room implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final Reference REFERENCE = Reference.published();
    private static final LawExaminer EXAMINER = new LawExaminer(REFERENCE);
    private static final ChromeDriver BROWSER = browser();

    private final Path data;
    private final Workbench workbench;

    private Room(Path data, Workbench workbench) {
        this.data = data;
        this.workbench = workbench;
    }

    static Room open() {
        try {
            var data = Files.createTempDirectory("honors-room");
            var room = new Room(data, Workbench.open(0, data, REFERENCE, EXAMINER, Clock.systemDefaultZone()));
            // The browser is the same for every room; what an earlier test left of it is not.
            room.size(1366, 900).go("/");
            room.script("localStorage.clear()");
            return room;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A room on a casebook that is open already. */
    static Room on(Casebook casebook) {
        try {
            var data = Files.createTempDirectory("honors-room");
            return new Room(data, Workbench.open(0, casebook, REFERENCE, EXAMINER, Clock.systemDefaultZone()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ChromeDriver browser() {
        var options = new ChromeOptions();
        options.setBinary("/usr/bin/chromium");
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--no-first-run",
                "--window-size=1366,900");
        var service = new ChromeDriverService.Builder()
                .usingDriverExecutable(new java.io.File("/usr/bin/chromedriver"))
                .usingAnyFreePort()
                .build();
        var browser = new ChromeDriver(service, options);
        browser.manage().timeouts().pageLoadTimeout(Duration.ofSeconds(60));
        Runtime.getRuntime().addShutdownHook(new Thread(browser::quit));
        return browser;
    }

    ChromeDriver browserItself() {
        return BROWSER;
    }

    String address(String path) {
        return "http://localhost:" + workbench.port() + path;
    }

    Room go(String path) {
        BROWSER.get(address(path));
        return this;
    }

    String path() {
        return URI.create(BROWSER.getCurrentUrl()).getPath();
    }

    WebElement see(String css) {
        return patiently().until(driver -> {
            var found = driver.findElements(By.cssSelector(css));
            return found.stream().filter(WebElement::isDisplayed).findFirst().orElse(null);
        });
    }

    /** Waits until that field holds the value; the page may be laid anew meanwhile. */
    Room seeValue(String css, String value) {
        patiently()
                .withMessage("\"" + value + "\" in " + css)
                .until(driver ->
                        value.equals(driver.findElement(By.cssSelector(css)).getDomProperty("value")));
        return this;
    }

    /**
     * A wait that bears with an element being replaced by its newer self while it is looked at. Not only the stale
     * reference: a driver that meets the swap half way answers with an error of its inspector, a plain WebDriverException.
     */
    private static FluentWait<WebDriver> patiently() {
        return new WebDriverWait(BROWSER, PATIENCE, Duration.ofMillis(25)).ignoring(WebDriverException.class);
    }

    boolean has(String css) {
        return patiently()
                .until(driver ->
                        Optional.of(!driver.findElements(By.cssSelector(css)).isEmpty()))
                .orElseThrow();
    }

    /** Waits until that part of the page holds the words. */
    WebElement see(String css, String words) {
        return patiently().withMessage("\"" + words + "\" in " + css).until(driver -> {
            for (var element : driver.findElements(By.cssSelector(css))) {
                if (text(element).contains(words)) {
                    return element;
                }
            }
            return null;
        });
    }

    private static String text(WebElement element) {
        return String.valueOf(element.getDomProperty("textContent")).replaceAll("\\s+", " ");
    }

    /** Waits until the page has no such part: a form that was sent is sent once the page that held it is left. */
    Room gone(String css) {
        patiently().until(driver -> driver.findElements(By.cssSelector(css)).isEmpty());
        return this;
    }

    String textOf(String css) {
        return patiently().until(driver -> text(see(css)));
    }

    Room click(String css) {
        patiently().until(driver -> {
            see(css).click();
            return true;
        });
        return this;
    }

    /** Puts a text into a field, in the place of what stood there. */
    Room type(String css, String text) {
        patiently().until(driver -> {
            see(css).sendKeys(Keys.chord(Keys.CONTROL, "a"), text);
            return true;
        });
        return this;
    }

    /** Presses keys wherever the page has its focus. */
    Room keys(CharSequence... keys) {
        new Actions(BROWSER).sendKeys(keys).perform();
        return this;
    }

    Room alt(CharSequence key) {
        new Actions(BROWSER).keyDown(Keys.ALT).sendKeys(key).keyUp(Keys.ALT).perform();
        return this;
    }

    /** The entry or control that has the focus, by its id. */
    String focused() {
        return String.valueOf(script("return document.activeElement.id"));
    }

    Object script(String script, Object... arguments) {
        return ((JavascriptExecutor) BROWSER).executeScript(script, arguments);
    }

    Object scriptAsync(String script) {
        return ((JavascriptExecutor) BROWSER).executeAsyncScript(script);
    }

    Room saved() {
        see("#saved", "Saved");
        return this;
    }

    /** Lays the tour out and returns the address of one of its folders. */
    String tour(String soldier) {
        post("/tour", "application/x-www-form-urlencoded", "");
        go("/");
        return patiently()
                .until(driver -> URI.create(String.valueOf(
                                driver.findElement(By.partialLinkText(soldier)).getDomProperty("href")))
                        .getPath());
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(address(path))).GET());
    }

    HttpResponse<String> post(String path, String type, String body) {
        return send(HttpRequest.newBuilder(URI.create(address(path)))
                .header("Content-Type", type)
                .header("X-Honors-Client", "program")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return HttpClient.newHttpClient()
                    .send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    Room size(int width, int height) {
        BROWSER.manage().window().setSize(new org.openqa.selenium.Dimension(width, height));
        return this;
    }

    /** Keeps a picture of the whole page, to its foot, among the artefacts of the build. */
    Room picture(String name) {
        var taken = BROWSER.executeCdpCommand(
                "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
        keep(name + ".png", Base64.getDecoder().decode(String.valueOf(taken.get("data"))));
        return this;
    }

    /** Keeps a picture of what the window shows. */
    Room view(String name) {
        keep(name + ".png", BROWSER.getScreenshotAs(OutputType.BYTES));
        return this;
    }

    static void keep(String name, byte[] content) {
        try {
            var folder = Files.createDirectories(Path.of("target", "screenshots"));
            Files.write(folder.resolve(name), content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double median(double[] values) {
        var sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    @Override
    public void close() {
        BROWSER.get("about:blank");
        workbench.close();
        try (var files = Files.walk(data)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
