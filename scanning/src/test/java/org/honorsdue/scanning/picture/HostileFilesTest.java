package org.honorsdue.scanning.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are broken, too large or meant to hurt. Each must end in words, none in an exception. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class HostileFilesTest {
    private static final long MEGABYTE = 1_000_000;

    @TempDir
    Path folder;

    private static Pages.Opened open(Path file) {
        return Pages.open(file, 20 * MEGABYTE, 6 * MEGABYTE, 100 * MEGABYTE);
    }

    private static String refused(Path file) {
        assertThat(open(file)).isInstanceOf(Pages.Opened.Refused.class);
        return ((Pages.Opened.Refused) open(file)).says();
    }

    private static Pages.Page first(Path file) {
        var opened = open(file);
        assertThat(opened).as("%s", opened).isInstanceOf(Pages.Opened.Ready.class);
        try (var pages = ((Pages.Opened.Ready) opened).pages()) {
            return pages.page(0);
        }
    }

    private static String unreadable(Path file) {
        var page = first(file);
        assertThat(page).as("%s", page).isInstanceOf(Pages.Page.Unreadable.class);
        return ((Pages.Page.Unreadable) page).says();
    }

    private static Pages.Page.Picture picture(Path file) {
        var page = first(file);
        assertThat(page).as("%s", page).isInstanceOf(Pages.Page.Picture.class);
        return (Pages.Page.Picture) page;
    }

    private static BufferedImage drawn(int width, int height, int type) {
        var picture = new BufferedImage(width, height, type);
        var pen = picture.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.BLACK);
        pen.fillRect(width / 4, height / 4, width / 2, height / 8);
        pen.dispose();
        return picture;
    }

    private Path saved(BufferedImage picture, String format, String name) throws IOException {
        var file = folder.resolve(name);
        assertThat(ImageIO.write(picture, format, file.toFile())).isTrue();
        return file;
    }

    @Test
    void a_file_that_is_not_there_is_named() {
        assertThat(refused(folder.resolve("no-such.jpg")))
                .contains("no-such.jpg")
                .contains("no such file");
    }

    @Test
    void an_empty_file_is_no_picture() throws IOException {
        assertThat(refused(Files.createFile(folder.resolve("empty.png")))).contains("no picture");
    }

    @Test
    void text_under_the_name_of_a_picture_is_refused() throws IOException {
        var file = Files.writeString(folder.resolve("letter.jpg"), "Dear Sir, ...");
        assertThat(refused(file)).contains("no picture").contains("JPEG, PNG");
    }

    @Test
    void a_picture_under_a_wrong_name_is_read_all_the_same() throws IOException {
        var file = saved(drawn(400, 500, BufferedImage.TYPE_INT_RGB), "png", "really-a-png.pdf");
        assertThat(picture(file).gray().width()).isEqualTo(400);
    }

    @Test
    void a_picture_cut_off_in_the_middle_ends_in_words_or_in_what_is_left_of_it() throws IOException {
        var whole = saved(drawn(1200, 1500, BufferedImage.TYPE_INT_RGB), "png", "whole.png");
        var bytes = Files.readAllBytes(whole);
        for (int keep : new int[] {20, 60, bytes.length / 2, bytes.length - 20}) {
            var file = Files.write(folder.resolve("cut.png"), Arrays.copyOf(bytes, keep));
            var opened = open(file);
            if (opened instanceof Pages.Opened.Ready ready) {
                try (var pages = ready.pages()) {
                    var page = pages.page(0);
                    if (page instanceof Pages.Page.Unreadable unreadable) {
                        assertThat(unreadable.says()).contains("cut.png").contains("damaged");
                    } else {
                        assertThat(((Pages.Page.Picture) page).gray().width()).isEqualTo(1200);
                    }
                }
            }
        }
    }

    @Test
    void a_photograph_cut_off_in_the_middle_ends_in_words_or_in_what_is_left_of_it() throws IOException {
        var bytes = Files.readAllBytes(saved(drawn(1200, 1500, BufferedImage.TYPE_INT_RGB), "jpg", "whole.jpg"));
        for (int keep : new int[] {4, 25, 200, bytes.length / 2, bytes.length - 2}) {
            var file = Files.write(folder.resolve("cut.jpg"), Arrays.copyOf(bytes, keep));
            if (open(file) instanceof Pages.Opened.Ready ready) {
                try (var pages = ready.pages()) {
                    var page = pages.page(0);
                    if (page instanceof Pages.Page.Unreadable unreadable) {
                        assertThat(unreadable.says()).contains("cut.jpg").contains("damaged");
                    } else {
                        assertThat(((Pages.Page.Picture) page).gray().width()).isEqualTo(1200);
                    }
                }
            } else {
                assertThat(refused(file)).contains("cut.jpg");
            }
        }
    }

    @Test
    void bytes_without_sense_behind_the_mark_of_each_kind_end_in_words() throws IOException {
        var dice = new java.util.Random(5);
        for (var mark :
                new String[] {"\u00ff\u00d8\u00ff", "\u0089PNG", "II*\0", "MM\0*", "GIF89a", "BM", "%PDF-1.4\n"}) {
            for (int round = 0; round < 20; round++) {
                var bytes = new byte[4000];
                dice.nextBytes(bytes);
                var head = mark.getBytes(StandardCharsets.ISO_8859_1);
                System.arraycopy(head, 0, bytes, 0, head.length);
                var file = Files.write(folder.resolve("noise"), bytes);
                if (open(file) instanceof Pages.Opened.Ready ready) {
                    try (var pages = ready.pages()) {
                        for (int i = 0; i < Math.min(3, pages.count()); i++) {
                            assertThat(pages.page(i)).as("%s", mark).isInstanceOf(Pages.Page.Unreadable.class);
                        }
                    }
                } else {
                    assertThat(refused(file)).contains("noise");
                }
            }
        }
    }

    @Test
    void a_picture_of_one_point_is_too_small() throws IOException {
        assertThat(unreadable(saved(drawn(1, 1, BufferedImage.TYPE_INT_RGB), "png", "dot.png")))
                .contains("1 by 1")
                .contains("300 dots");
    }

    @Test
    void a_header_that_claims_four_hundred_million_points_is_refused_before_anything_is_allocated() throws IOException {
        // 20,000 by 20,000 in a few hundred bytes: the data behind the header is a bomb of zeros.
        var file = Files.write(folder.resolve("bomb.png"), bomb(20_000, 20_000));
        assertThat(Files.size(file)).isLessThan(2 * MEGABYTE);
        long before = used();
        assertThat(unreadable(file)).contains("20,000 by 20,000").contains("larger");
        assertThat(used() - before).isLessThan(60 * MEGABYTE);
    }

    @Test
    void a_large_picture_within_the_limit_is_taken_in_coarser() throws IOException {
        var page = picture(saved(drawn(5000, 4000, BufferedImage.TYPE_BYTE_GRAY), "png", "large.png"));
        assertThat((long) page.gray().width() * page.gray().height()).isLessThanOrEqualTo(6 * MEGABYTE);
        assertThat(page.remarks()).anyMatch(says -> says.contains("1/2"));
    }

    @Test
    void a_file_larger_than_the_limit_is_refused_unread() throws IOException {
        var file = folder.resolve("huge.tif");
        try (var out = new java.io.RandomAccessFile(file.toFile(), "rw")) {
            out.setLength(21 * MEGABYTE);
        }
        assertThat(refused(file)).contains("21,000,000").contains("20,000,000");
    }

    @Test
    void sixteen_bits_a_point_are_read_as_eight() throws IOException {
        var deep = new BufferedImage(300, 300, BufferedImage.TYPE_USHORT_GRAY);
        for (int y = 0; y < 300; y++) {
            for (int x = 0; x < 300; x++) {
                deep.getRaster().setSample(x, y, 0, x < 150 ? 65535 : 0x4000);
            }
        }
        var gray = picture(saved(deep, "png", "deep.png")).gray();
        assertThat(gray.at(10, 10)).isEqualTo(255);
        assertThat(gray.at(290, 10)).isBetween(60, 68);
    }

    @Test
    void a_picture_with_clear_parts_is_read_on_white_paper() throws IOException {
        var clear = new BufferedImage(300, 300, BufferedImage.TYPE_INT_ARGB);
        assertThat(picture(saved(clear, "png", "clear.png")).gray().at(5, 5)).isEqualTo(255);
    }

    @Test
    void four_printing_inks_are_mixed_to_gray() throws IOException {
        var file = folder.resolve("inks.jpg");
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var inks =
                java.awt.image.Raster.createInterleavedRaster(java.awt.image.DataBuffer.TYPE_BYTE, 320, 320, 4, null);
        for (int y = 0; y < 320; y++) {
            for (int x = 0; x < 320; x++) {
                // Without Adobe's marker the numbers are ink: nothing on the left, full black on the right.
                inks.setPixel(x, y, x < 160 ? new int[] {0, 0, 0, 0} : new int[] {0, 0, 0, 255});
            }
        }
        try (var out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(inks, null, null), null);
        } finally {
            writer.dispose();
        }
        var gray = picture(file).gray();
        assertThat(gray.at(20, 100)).isGreaterThan(220);
        assertThat(gray.at(300, 100)).isLessThan(40);
    }

    @Test
    void of_an_animation_only_the_first_picture_is_read_and_that_is_said() throws IOException {
        var file = folder.resolve("moving.gif");
        var writer = ImageIO.getImageWritersByFormatName("gif").next();
        try (var out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.prepareWriteSequence(null);
            for (int i = 0; i < 5; i++) {
                writer.writeToSequence(new IIOImage(drawn(300, 400, BufferedImage.TYPE_BYTE_GRAY), null, null), null);
            }
            writer.endWriteSequence();
        } finally {
            writer.dispose();
        }
        var page = picture(file);
        assertThat(page.remarks()).anyMatch(says -> says.contains("animation"));
        try (var pages = ((Pages.Opened.Ready) open(file)).pages()) {
            assertThat(pages.count()).isEqualTo(1);
        }
    }

    @Test
    void the_pages_of_a_tiff_are_counted() throws IOException {
        var file = folder.resolve("pages.tif");
        var writer = ImageIO.getImageWritersByFormatName("tiff").next();
        try (var out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.prepareWriteSequence(null);
            for (int i = 0; i < 3; i++) {
                writer.writeToSequence(new IIOImage(drawn(300, 400, BufferedImage.TYPE_BYTE_GRAY), null, null), null);
            }
            writer.endWriteSequence();
        } finally {
            writer.dispose();
        }
        try (var pages = ((Pages.Opened.Ready) open(file)).pages()) {
            assertThat(pages.count()).isEqualTo(3);
            assertThat(pages.page(2)).isInstanceOf(Pages.Page.Picture.class);
        }
    }

    @Test
    void a_pdf_locked_with_a_password_is_refused_with_the_way_out() throws IOException {
        var file = folder.resolve("locked.pdf");
        try (var document = new PDDocument()) {
            document.addPage(new PDPage(PDRectangle.LETTER));
            document.protect(new StandardProtectionPolicy("owner", "secret", new AccessPermission()));
            document.save(file.toFile());
        }
        assertThat(refused(file)).contains("password");
    }

    @Test
    void a_pdf_that_is_only_a_head_is_damaged() throws IOException {
        assertThat(refused(Files.writeString(folder.resolve("head.pdf"), "%PDF-1.7\n")))
                .contains("damaged");
    }

    @Test
    void a_pdf_page_of_a_square_mile_is_drawn_within_the_limit() throws IOException {
        var file = folder.resolve("mile.pdf");
        try (var document = new PDDocument()) {
            document.addPage(new PDPage(new PDRectangle(14_400, 14_400)));
            document.save(file.toFile());
        }
        var page = picture(file);
        assertThat((long) page.gray().width() * page.gray().height()).isLessThanOrEqualTo(6_100_000L);
        assertThat(page.remarks()).anyMatch(says -> says.contains("very large"));
    }

    @Test
    void an_ordinary_pdf_page_is_drawn_at_three_hundred_dots_to_the_inch_or_the_limit() throws IOException {
        var file = folder.resolve("plain.pdf");
        try (var document = new PDDocument()) {
            document.addPage(new PDPage(new PDRectangle(5 * 72, 4 * 72)));
            document.save(file.toFile());
        }
        assertThat(picture(file).gray().width()).isEqualTo(1500);
    }

    @Test
    void pictures_of_telephones_that_java_cannot_open_are_named_with_the_way_out() throws IOException {
        var head = "\0\0\0\u0018ftypheic".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(refused(Files.write(folder.resolve("phone.heic"), head)))
                .contains("HEIC")
                .contains("JPEG");
    }

    private static long used() {
        System.gc();
        var runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    /** A PNG whose compressed data unfolds to that many gray points. */
    private static byte[] bomb(int width, int height) throws IOException {
        var bytes = new ByteArrayOutputStream();
        bytes.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        var head = new ByteArrayOutputStream();
        var out = new DataOutputStream(head);
        out.writeInt(width);
        out.writeInt(height);
        out.write(new byte[] {8, 0, 0, 0, 0});
        chunk(bytes, "IHDR", head.toByteArray());
        var data = new ByteArrayOutputStream();
        try (var deflater = new DeflaterOutputStream(data)) {
            var row = new byte[width + 1];
            for (int y = 0; y < height; y++) {
                deflater.write(row);
            }
        }
        chunk(bytes, "IDAT", data.toByteArray());
        chunk(bytes, "IEND", new byte[0]);
        return bytes.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream to, String name, byte[] content) throws IOException {
        var out = new DataOutputStream(to);
        out.writeInt(content.length);
        var named = name.getBytes(StandardCharsets.US_ASCII);
        out.write(named);
        out.write(content);
        var check = new CRC32();
        check.update(named);
        check.update(content);
        out.writeInt((int) check.getValue());
    }
}
