package org.honorsdue.casebook;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The casebook in a database: one SQLite file, or PostgreSQL for an office. Thread-safe.
 *
 * <p>Every change is one transaction; a change that was acknowledged survives the death of the process. A saver names
 * the revision he started from and is refused with {@link StaleRevision} when another came first.
 */
public final class Casebook implements AutoCloseable {
    /** Saves of the same kind by the same person within this time count as one change, so that typing is one revision. */
    private static final Duration ONE_CHANGE = Duration.ofMinutes(2);

    /** How the media types of what the program keeps for itself begin. */
    private static final String OWN_KIND = "application/vnd.honors-due.";

    private final Jdbi database;
    private final Optional<HikariDataSource> pool;
    private final Clock clock;
    private final Optional<InUse> inUse;

    private Casebook(Jdbi database, Optional<HikariDataSource> pool, Clock clock, Optional<InUse> inUse) {
        this.database = database;
        this.pool = pool;
        this.clock = clock;
        this.inUse = inUse;
    }

    /** Opens the file, or makes it when there is none. */
    public static Casebook inFile(Path file, Clock clock) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        var source = new SQLiteDataSource(sqlite());
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        var inUse = InUse.shared(file.toAbsolutePath());
        try {
            migrate(Flyway.configure().dataSource(source), "blob");
        } catch (RuntimeException e) {
            inUse.close();
            throw e;
        }
        return new Casebook(Jdbi.create(source), Optional.empty(), clock, Optional.of(inUse));
    }

    /** Opens a PostgreSQL database, making the tables when they are not there. */
    public static Casebook onServer(String jdbcUrl, String user, String password, Clock clock) {
        var config = new HikariConfig();
        config.setJdbcUrl(jdbcUrl);
        config.setUsername(user);
        config.setPassword(password);
        config.setMaximumPoolSize(8);
        var pool = new HikariDataSource(config);
        migrate(Flyway.configure().dataSource(pool), "bytea");
        return new Casebook(Jdbi.create(pool), Optional.of(pool), clock, Optional.empty());
    }

    private static SQLiteConfig sqlite() {
        var config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        // FULL flushes at each commit: a save that was acknowledged survives a power cut too.
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(10_000);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return config;
    }

    private static void migrate(org.flywaydb.core.api.configuration.FluentConfiguration flyway, String blob) {
        flyway.locations("classpath:org/honorsdue/casebook/migration")
                .placeholders(Map.of("blob", blob))
                .load()
                .migrate();
    }

    @Override
    public void close() {
        pool.ifPresent(HikariDataSource::close);
        inUse.ifPresent(InUse::close);
    }

    // ---- cases -----------------------------------------------------------------------------------------------

    /** Keeps a new case and returns it at revision 1. */
    public KeptCase create(CaseContent content, Collection<SearchTerm> terms, String who) {
        return database.inTransaction(handle -> create(handle, newId(), content, terms, who, "case opened"));
    }

    private KeptCase create(
            Handle handle, String id, CaseContent content, Collection<SearchTerm> terms, String who, String what) {
        Instant now = clock.instant();
        handle.execute(
                "insert into case_file (id, revision, title, stage, changed_at, removed) values (?, 1, ?, ?, ?, 0)",
                id,
                content.title(),
                content.stage().name(),
                now.toString());
        insertRevision(handle, id, new Revision(1, now, who, what, content));
        index(handle, id, terms);
        return new KeptCase(id, 1, now, false, content);
    }

    /** @throws NoSuchCase when there is none */
    public KeptCase open(String id) {
        return database.withHandle(handle -> open(handle, id));
    }

    private static KeptCase open(Handle handle, String id) {
        return handle.createQuery(
                        "select f.id, f.revision, f.changed_at, f.removed, r.title, r.stage, r.casefile, r.notes, r.display"
                                + " from case_file f join case_revision r on r.case_id = f.id and r.revision = f.revision"
                                + " where f.id = :id")
                .bind("id", id)
                .map((row, context) -> new KeptCase(
                        row.getString("id"),
                        row.getInt("revision"),
                        Instant.parse(row.getString("changed_at")),
                        row.getInt("removed") != 0,
                        content(row)))
                .findOne()
                .orElseThrow(() -> new NoSuchCase(id));
    }

    private static CaseContent content(ResultSet row) throws SQLException {
        return new CaseContent(
                row.getString("title"),
                Stage.valueOf(row.getString("stage")),
                row.getString("casefile"),
                row.getString("notes"),
                row.getString("display"));
    }

    /**
     * Saves a new state of a case.
     *
     * @param startedFrom the revision the saver had before him
     * @param what the change in words; saves with the same words by the same person within two minutes are one change
     * @throws StaleRevision when the case has moved on since; nothing is saved
     */
    public KeptCase save(
            String id, int startedFrom, CaseContent content, Collection<SearchTerm> terms, String who, String what) {
        return database.inTransaction(handle -> {
            var current = open(handle, id);
            if (current.revision() != startedFrom) {
                throw new StaleRevision(current, startedFrom);
            }
            if (current.content().equals(content)) {
                return current;
            }
            var saved = advance(handle, current, content, who, what, true);
            index(handle, id, terms);
            return saved;
        });
    }

    private KeptCase advance(
            Handle handle, KeptCase current, CaseContent content, String who, String what, boolean joinable) {
        Instant now = clock.instant();
        int next = current.revision() + 1;
        if (joinable) {
            var last = revision(handle, current.id(), current.revision());
            boolean sameChange = last.madeBy().equals(who)
                    && last.what().equals(what)
                    && Duration.between(last.madeAt(), now).compareTo(ONE_CHANGE) < 0;
            if (sameChange) {
                handle.execute(
                        "delete from case_examination where case_id = ? and revision = ?", current.id(), last.number());
                handle.execute(
                        "delete from case_revision where case_id = ? and revision = ?", current.id(), last.number());
            }
        }
        insertRevision(handle, current.id(), new Revision(next, now, who, what, content));
        handle.execute(
                "update case_file set revision = ?, title = ?, stage = ?, changed_at = ? where id = ?",
                next,
                content.title(),
                content.stage().name(),
                now.toString(),
                current.id());
        return new KeptCase(current.id(), next, now, current.removed(), content);
    }

    private static void insertRevision(Handle handle, String id, Revision revision) {
        var content = revision.content();
        handle.execute(
                "insert into case_revision (case_id, revision, made_at, made_by, what, title, stage, casefile, notes,"
                        + " display) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                id,
                revision.number(),
                revision.madeAt().toString(),
                revision.madeBy(),
                revision.what(),
                content.title(),
                content.stage().name(),
                content.casefile(),
                content.notes(),
                content.display());
    }

    /** Every state the case had, the newest first. */
    public List<Revision> history(String id) {
        return database.withHandle(
                handle -> handle.createQuery("select * from case_revision where case_id = :id order by revision desc")
                        .bind("id", id)
                        .map((row, context) -> revision(row))
                        .list());
    }

    private static Revision revision(Handle handle, String id, int number) {
        return handle.createQuery("select * from case_revision where case_id = :id and revision = :number")
                .bind("id", id)
                .bind("number", number)
                .map((row, context) -> revision(row))
                .findOne()
                .orElseThrow(() -> new IllegalArgumentException(
                        "Case %s has no revision %d; its history lists those it has.".formatted(id, number)));
    }

    private static Revision revision(ResultSet row) throws SQLException {
        return new Revision(
                row.getInt("revision"),
                Instant.parse(row.getString("made_at")),
                row.getString("made_by"),
                row.getString("what"),
                content(row));
    }

    /**
     * Makes an earlier state the present one again. That is itself a change: the states between stay in the history.
     *
     * @throws StaleRevision when the case has moved on since
     */
    public KeptCase restore(String id, int startedFrom, int revision, Collection<SearchTerm> terms, String who) {
        return database.inTransaction(handle -> {
            var current = open(handle, id);
            if (current.revision() != startedFrom) {
                throw new StaleRevision(current, startedFrom);
            }
            var earlier = revision(handle, id, revision);
            var restored = advance(handle, current, earlier.content(), who, "went back to revision " + revision, false);
            index(handle, id, terms);
            return restored;
        });
    }

    /** Takes a case off the list, or puts it back. It stays in the file with its whole history. */
    public void setRemoved(String id, boolean removed) {
        int rows = database.withHandle(
                handle -> handle.execute("update case_file set removed = ? where id = ?", removed ? 1 : 0, id));
        if (rows == 0) {
            throw new NoSuchCase(id);
        }
    }

    // ---- search ----------------------------------------------------------------------------------------------

    private static void index(Handle handle, String id, Collection<SearchTerm> terms) {
        handle.execute("delete from case_term where case_id = ?", id);
        if (terms.isEmpty()) {
            return;
        }
        var batch = handle.prepareBatch("insert into case_term (case_id, field, term) values (?, ?, ?)");
        for (var term : terms) {
            batch.add(id, term.field().name(), term.folded());
        }
        batch.execute();
    }

    /** The cases that match, the last changed first. */
    public List<CaseLine> list(CaseQuery query) {
        var sql = new StringBuilder("select id, title, stage, changed_at from case_file where removed = :removed");
        var words = words(query.words());
        where(sql, query, words);
        sql.append(" order by changed_at desc, id limit :limit offset :offset");
        return database.withHandle(handle -> {
            var statement = handle.createQuery(sql.toString())
                    .bind("removed", query.removed() ? 1 : 0)
                    .bind("limit", query.limit())
                    .bind("offset", query.offset());
            bind(statement, query, words);
            return statement
                    .map((row, context) -> new CaseLine(
                            row.getString("id"),
                            row.getString("title"),
                            Stage.valueOf(row.getString("stage")),
                            Instant.parse(row.getString("changed_at"))))
                    .list();
        });
    }

    /** How many cases match, whatever offset and limit say. */
    public int count(CaseQuery query) {
        var sql = new StringBuilder("select count(*) from case_file where removed = :removed");
        var words = words(query.words());
        where(sql, query, words);
        return database.withHandle(handle -> {
            var statement = handle.createQuery(sql.toString()).bind("removed", query.removed() ? 1 : 0);
            bind(statement, query, words);
            return statement.mapTo(Integer.class).one();
        });
    }

    private static List<String> words(String words) {
        var list = new ArrayList<String>();
        for (String word : words.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
            if (!word.isEmpty()) {
                list.add(word);
            }
        }
        return list;
    }

    private static void where(StringBuilder sql, CaseQuery query, List<String> words) {
        if (query.stage().isPresent()) {
            sql.append(" and stage = :stage");
        }
        for (int i = 0; i < words.size(); i++) {
            sql.append(" and exists (select 1 from case_term t where t.case_id = case_file.id");
            if (query.field().isPresent()) {
                sql.append(" and t.field = :field");
            }
            sql.append(" and t.term like :word").append(i).append(" escape '!')");
        }
    }

    private static void bind(org.jdbi.v3.core.statement.Query statement, CaseQuery query, List<String> words) {
        query.stage().ifPresent(stage -> statement.bind("stage", stage.name()));
        if (!words.isEmpty()) {
            query.field().ifPresent(field -> statement.bind("field", field.name()));
        }
        for (int i = 0; i < words.size(); i++) {
            String literal = words.get(i).replace("!", "!!").replace("%", "!%").replace("_", "!_");
            statement.bind("word" + i, "%" + literal + "%");
        }
    }

    // ---- attachments, letters, examinations --------------------------------------------------------------------

    /** Keeps a picture or document with the case. The bytes are kept as they are. */
    public Attachment attach(String caseId, String name, String mediaType, byte[] content) {
        var attachment = new Attachment(newId(), name, mediaType, sha256(content), content.length, clock.instant());
        database.useTransaction(handle -> {
            open(handle, caseId);
            insertAttachment(handle, caseId, attachment, content);
        });
        return attachment;
    }

    /**
     * Writes what the program itself keeps beside a picture anew, in one step; what a person handed in is never written
     * over.
     *
     * @throws IllegalArgumentException for a picture or a document somebody handed in
     */
    public void rewrite(String caseId, Attachment attachment, byte[] content) {
        if (!attachment.mediaType().startsWith(OWN_KIND)) {
            throw new IllegalArgumentException("\"%s\" was handed in and stays as it is.".formatted(attachment.name()));
        }
        database.useHandle(handle -> handle.execute(
                "update case_attachment set content = ?, sha256 = ?, bytes = ? where case_id = ? and id = ?",
                content,
                sha256(content),
                content.length,
                caseId,
                attachment.id()));
    }

    static void insertAttachment(Handle handle, String caseId, Attachment attachment, byte[] content) {
        handle.execute(
                "insert into case_attachment (id, case_id, name, media_type, sha256, bytes, attached_at, removed, content)"
                        + " values (?, ?, ?, ?, ?, ?, ?, 0, ?)",
                attachment.id(),
                caseId,
                attachment.name(),
                attachment.mediaType(),
                attachment.sha256(),
                attachment.bytes(),
                attachment.attachedAt().toString(),
                content);
    }

    public List<Attachment> attachments(String caseId) {
        return database.withHandle(handle -> handle.createQuery(
                        "select id, name, media_type, sha256, bytes, attached_at from case_attachment"
                                + " where case_id = :id and removed = 0 order by attached_at, id")
                .bind("id", caseId)
                .map((row, context) -> new Attachment(
                        row.getString("id"),
                        row.getString("name"),
                        row.getString("media_type"),
                        row.getString("sha256"),
                        row.getInt("bytes"),
                        Instant.parse(row.getString("attached_at"))))
                .list());
    }

    /** The bytes as they were handed in; empty when the case has no such attachment. */
    public Optional<byte[]> attachmentContent(String caseId, String attachmentId) {
        return database.withHandle(
                handle -> handle.createQuery("select content from case_attachment where case_id = :case and id = :id")
                        .bind("case", caseId)
                        .bind("id", attachmentId)
                        .map((row, context) -> row.getBytes("content"))
                        .findOne());
    }

    /** Takes an attachment off the case; its bytes stay in the file. */
    public void removeAttachment(String caseId, String attachmentId) {
        database.useHandle(handle -> handle.execute(
                "update case_attachment set removed = 1 where case_id = ? and id = ?", caseId, attachmentId));
    }

    public Letter keepLetter(String caseId, String kind, String body) {
        var letter = new Letter(newId(), kind, clock.instant(), Optional.empty(), Optional.empty(), body);
        database.useTransaction(handle -> {
            open(handle, caseId);
            insertLetter(handle, caseId, letter);
        });
        return letter;
    }

    static void insertLetter(Handle handle, String caseId, Letter letter) {
        handle.execute(
                "insert into case_letter (id, case_id, kind, made_at, sent_on, answered_on, body) values (?, ?, ?, ?, ?, ?, ?)",
                letter.id(),
                caseId,
                letter.kind(),
                letter.madeAt().toString(),
                letter.sentOn().map(LocalDate::toString).orElse(null),
                letter.answeredOn().map(LocalDate::toString).orElse(null),
                letter.body());
    }

    public List<Letter> letters(String caseId) {
        return database.withHandle(handle -> handle.createQuery(
                        "select * from case_letter where case_id = :id order by made_at, id")
                .bind("id", caseId)
                .map((row, context) -> new Letter(
                        row.getString("id"),
                        row.getString("kind"),
                        Instant.parse(row.getString("made_at")),
                        Optional.ofNullable(row.getString("sent_on")).map(LocalDate::parse),
                        Optional.ofNullable(row.getString("answered_on")).map(LocalDate::parse),
                        row.getString("body")))
                .list());
    }

    public void markLetter(String caseId, String letterId, Optional<LocalDate> sentOn, Optional<LocalDate> answeredOn) {
        database.useHandle(handle -> handle.execute(
                "update case_letter set sent_on = ?, answered_on = ? where case_id = ? and id = ?",
                sentOn.map(LocalDate::toString).orElse(null),
                answeredOn.map(LocalDate::toString).orElse(null),
                caseId,
                letterId));
    }

    /** Keeps the findings of one examination, in place of an earlier one of the same revision and date. */
    public void keepExamination(String caseId, Examination examination) {
        database.useTransaction(handle -> {
            handle.execute(
                    "delete from case_examination where case_id = ? and revision = ? and as_of = ?",
                    caseId,
                    examination.revision(),
                    examination.asOf().toString());
            handle.execute(
                    "insert into case_examination (case_id, revision, as_of, made_at, program_version, findings)"
                            + " values (?, ?, ?, ?, ?, ?)",
                    caseId,
                    examination.revision(),
                    examination.asOf().toString(),
                    examination.madeAt().toString(),
                    examination.programVersion(),
                    examination.findings());
        });
    }

    public Optional<Examination> lastExamination(String caseId) {
        return database.withHandle(handle -> handle.createQuery(
                        "select * from case_examination where case_id = :id order by made_at desc, revision desc limit 1")
                .bind("id", caseId)
                .map((row, context) -> new Examination(
                        row.getInt("revision"),
                        LocalDate.parse(row.getString("as_of")),
                        Instant.parse(row.getString("made_at")),
                        row.getString("program_version"),
                        row.getString("findings")))
                .findOne());
    }

    // ---- backup, export, import --------------------------------------------------------------------------------

    /**
     * Whether the casebook is one file on this machine, of which {@link #backUp} makes a copy; a server's is not.
     */
    public boolean isFile() {
        return inUse.isPresent();
    }

    /**
     * Copies the whole casebook into one file while it is in use.
     *
     * @throws UnsupportedOperationException on a PostgreSQL casebook, which has its own tools for that
     */
    public void backUp(Path file) throws IOException {
        if (!isFile()) {
            throw new UnsupportedOperationException(
                    "This casebook is on a PostgreSQL server; back it up with the server's own tools.");
        }
        Path aside = file.resolveSibling(file.getFileName() + ".part");
        Files.deleteIfExists(aside);
        database.useHandle(
                handle -> handle.execute("vacuum into ?", aside.toAbsolutePath().toString()));
        Files.move(
                aside,
                file,
                java.nio.file.StandardCopyOption.REPLACE_EXISTING,
                java.nio.file.StandardCopyOption.ATOMIC_MOVE);
    }

    /** The whole case as one plain file: see {@link CaseExport}. */
    public String export(String id) {
        var kept = open(id);
        var pictures = new ArrayList<CaseExport.Picture>();
        for (var attachment : attachments(id)) {
            pictures.add(new CaseExport.Picture(
                    attachment, attachmentContent(id, attachment.id()).orElseThrow()));
        }
        return CaseExport.write(new CaseExport(kept, history(id), pictures, letters(id)));
    }

    /**
     * Keeps a case from a file made by {@link #export}, as a new case with the history it had.
     *
     * @throws CaseExport.Damaged when the file is not whole; nothing is kept
     */
    public KeptCase importCase(String file, Collection<SearchTerm> terms, String who) throws CaseExport.Damaged {
        var export = CaseExport.read(file);
        return database.inTransaction(handle -> {
            String id = newId();
            Instant now = clock.instant();
            var revisions = new ArrayList<>(export.history());
            int number = revisions.stream().mapToInt(Revision::number).max().orElse(0) + 1;
            revisions.add(new Revision(
                    number, now, who, "brought in from a file", export.kept().content()));
            var content = export.kept().content();
            handle.execute(
                    "insert into case_file (id, revision, title, stage, changed_at, removed) values (?, ?, ?, ?, ?, 0)",
                    id,
                    number,
                    content.title(),
                    content.stage().name(),
                    now.toString());
            for (var revision : revisions) {
                insertRevision(handle, id, revision);
            }
            for (var picture : export.pictures()) {
                var old = picture.attachment();
                var copy = new Attachment(
                        newId(), old.name(), old.mediaType(), old.sha256(), old.bytes(), old.attachedAt());
                insertAttachment(handle, id, copy, picture.content());
            }
            for (var letter : export.letters()) {
                insertLetter(
                        handle,
                        id,
                        new Letter(
                                newId(),
                                letter.kind(),
                                letter.madeAt(),
                                letter.sentOn(),
                                letter.answeredOn(),
                                letter.body()));
            }
            index(handle, id, terms);
            return new KeptCase(id, number, now, false, content);
        });
    }

    /** Replaces the search words of a case, for an import or after the program learned to read more. */
    public void reindex(String id, Collection<SearchTerm> terms) {
        database.useTransaction(handle -> index(handle, id, terms));
    }

    private static String newId() {
        return UUID.randomUUID().toString();
    }

    static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256.", e);
        }
    }
}
