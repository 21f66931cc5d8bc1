package stokewell.web;

final class WeatherFiles {
    static final int MOST = 8 << 20;
}
