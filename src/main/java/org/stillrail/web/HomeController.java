package org.stillrail.web;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** The front door opens on the projects. */
@Controller
class HomeController {

    @GetMapping("/")
    String home() {
        return "redirect:/projects";
    }
}
