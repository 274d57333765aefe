package org.stillrail.review;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.stillrail.bank.Banks;
import org.stillrail.document.CanonicalJson;
import org.stillrail.web.Download;
import org.stillrail.web.NotFoundException;

/** What was submitted and signed: shown, checked against its hash, computed again, and given out byte for byte. */
@Controller
@RequestMapping("/reviews/snapshots/{snapshotId}")
class SnapshotController {

    private static final int HASH_IN_NAME = 12;

    private final Snapshots snapshots;
    private final Banks banks;

    SnapshotController(Snapshots snapshots, Banks banks) {
        this.snapshots = snapshots;
        this.banks = banks;
    }

    @GetMapping
    String show(@PathVariable UUID snapshotId, Model model) {
        return page(require(snapshotId), false, model);
    }

    /** Stores nothing; a POST because it costs time. */
    @PostMapping("/recompute")
    String recompute(@PathVariable UUID snapshotId, Model model) {
        return page(require(snapshotId), true, model);
    }

    @GetMapping("/content")
    ResponseEntity<byte[]> content(@PathVariable UUID snapshotId) {
        Snapshot snapshot = require(snapshotId);
        String name = "snapshot-" + snapshot.sha256().substring(0, HASH_IN_NAME) + ".json";
        return Download.of(name, MediaType.APPLICATION_JSON, snapshot.content().copy());
    }

    private Snapshot require(UUID snapshotId) {
        return snapshots.find(snapshotId).orElseThrow(() -> new NotFoundException("There is no snapshot with this address."));
    }

    private String page(Snapshot snapshot, boolean recompute, Model model) {
        SnapshotDocument document = null;
        String unreadable = null;
        try {
            document = CanonicalJson.read(new String(snapshot.content().copy(), StandardCharsets.UTF_8), SnapshotDocument.class);
        } catch (IllegalArgumentException e) {
            unreadable = e.getMessage();
        }
        boolean intact = snapshot.intact();
        model.addAttribute("view", new SnapshotView(snapshot, banks.requireRevision(snapshot.revisionId()), intact, document, unreadable,
                snapshots.signed(snapshot),
                recompute && document != null ? Recomputation.of(document) : null));
        return "review/snapshot";
    }
}
