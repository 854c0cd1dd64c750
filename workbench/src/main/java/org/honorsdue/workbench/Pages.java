package org.honorsdue.workbench;

import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.util.Map;

/** The compiled pages. */
record Pages(TemplateEngine engine) {
    /** Answers with a page. */
    void show(Context answer, String name, Map<String, Object> parameters) {
        answer.contentType("text/html; charset=utf-8").result(text(name, parameters));
    }

    /** A page, or a part of one, as text. */
    String text(String name, Map<String, Object> parameters) {
        var out = new StringOutput();
        engine.render(name, parameters, out);
        return out.toString();
    }
}
