package stokewell.web;

import java.util.List;

/**
 * One single change that may help.
 *
 * @param id       stable
 * @param what     it is, in words
 * @param effort   it asks for
 * @param settings {@code key=value} each, laid over the file
 */
record Help(String id, String what, Effort effort, List<String> settings) {

    /** What a person with a welder's tools gives for it: common practice, no source. */
    enum Effort {
        NOTHING("nothing", "a setting, or a habit"),
        HOUR("an hour", "an hour or two, and little money"),
        DAY("a day", "a day, and some material"),
        DAYS("days", "days of work, or a new part");

        final String word;
        final String says;

        Effort(String word, String says) {
            this.word = word;
            this.says = says;
        }
    }
}
