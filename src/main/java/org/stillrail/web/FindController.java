package org.stillrail.web;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Search over everything from the one box in the header. */
@Controller
class FindController {

    private static final int MOST = 20;
    private static final int LONGEST = 200;

    private final List<Findable> rooms;

    FindController(List<Findable> rooms) {
        this.rooms = rooms;
    }

    /** What one room found, one more than is shown where there are more. */
    record Group(String heading, List<Findable.Found> found, boolean more) {
    }

    @GetMapping("/find")
    String find(@RequestParam(defaultValue = "") String q, Model model) {
        String text = q.replace("\0", "").strip();
        String asked = text.substring(0, Math.min(LONGEST, text.length()));
        List<Group> groups = new ArrayList<>();
        if (!asked.isEmpty()) {
            SearchWords words = SearchWords.of(asked);
            for (Findable room : rooms) {
                List<Findable.Found> found = room.find(words, MOST + 1);
                if (!found.isEmpty()) {
                    groups.add(new Group(room.heading(), found.subList(0, Math.min(MOST, found.size())), found.size() > MOST));
                }
            }
        }
        model.addAttribute("searched", asked);
        model.addAttribute("groups", groups);
        return "find";
    }
}
