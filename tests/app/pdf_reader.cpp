// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pdf_reader.h"

#include "base/number.h"

#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <string_view>
#include <sys/wait.h>

namespace drawercast::test {

using shape::Vec;

namespace {

constexpr double mm_per_pt = 25.4 / 72;

struct Matrix {
    double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;
    Vec operator()(Vec p) const { return {a * p.x + c * p.y + e, b * p.x + d * p.y + f}; }
    /// `inner` first, then this: how `cm` adds to the matrix in force.
    Matrix after(const Matrix& m) const {
        return {a * m.a + c * m.b, b * m.a + d * m.b,     a * m.c + c * m.d,
                b * m.c + d * m.d, a * m.e + c * m.f + e, b * m.e + d * m.f + f};
    }
};

/// Words of a content stream; strings and dictionaries are passed over, as they hold no geometry.
std::vector<std::string_view> tokens(std::string_view stream) {
    std::vector<std::string_view> words;
    std::size_t i = 0;
    const auto blank = [](char c) { return c == ' ' || c == '\n' || c == '\r' || c == '\t'; };
    while (i < stream.size()) {
        if (blank(stream[i])) {
            ++i;
        } else if (stream[i] == '(') {
            int depth = 0;
            do {
                if (stream[i] == '\\')
                    ++i;
                else if (stream[i] == '(')
                    ++depth;
                else if (stream[i] == ')')
                    --depth;
                ++i;
            } while (depth > 0 && i < stream.size());
        } else if (stream[i] == '<') {
            i = stream.find('>', i) + 1;
        } else if (stream[i] == '[' || stream[i] == ']') {
            ++i;
        } else {
            const std::size_t from = i;
            while (i < stream.size() && !blank(stream[i]) &&
                   std::string_view("[]()<>").find(stream[i]) == std::string_view::npos)
                ++i;
            if (i == from)
                ++i;
            else
                words.push_back(stream.substr(from, i - from));
        }
    }
    return words;
}

class Reader {
  public:
    explicit Reader(InkPage& page) : page_(page) {}

    void read(std::string_view stream) {
        std::vector<double> numbers;
        for (const auto word : tokens(stream)) {
            if (const auto number = parse_number(word))
                numbers.push_back(*number);
            else {
                obey(word, numbers);
                numbers.clear();
            }
        }
    }

  private:
    void point(char kind, double x, double y) {
        path_.points.push_back(state_.matrix({x, y}) * mm_per_pt);
        path_.kinds.push_back(kind);
    }
    void end(bool stroked, bool filled) {
        path_.stroked = stroked;
        path_.filled = filled;
        path_.width_mm = state_.width * std::abs(state_.matrix.a) * mm_per_pt;
        if (!path_.points.empty()) page_.paths.push_back(path_);
        path_ = {};
    }
    void obey(std::string_view op, const std::vector<double>& n) {
        if (op == "q")
            stack_.push_back(state_);
        else if (op == "Q") {
            ASSERT_FALSE(stack_.empty());
            state_ = stack_.back();
            stack_.pop_back();
        } else if (op == "cm" && n.size() == 6)
            state_.matrix = state_.matrix.after({n[0], n[1], n[2], n[3], n[4], n[5]});
        else if (op == "w" && n.size() == 1)
            state_.width = n[0];
        else if (op == "m" && n.size() == 2)
            point('m', n[0], n[1]);
        else if (op == "l" && n.size() == 2)
            point('l', n[0], n[1]);
        else if (op == "c" && n.size() == 6)
            for (std::size_t i = 0; i < 6; i += 2) point('c', n[i], n[i + 1]);
        else if (op == "re" && n.size() == 4) {
            point('m', n[0], n[1]);
            point('l', n[0] + n[2], n[1]);
            point('l', n[0] + n[2], n[1] + n[3]);
            point('l', n[0], n[1] + n[3]);
        } else if (op == "W" || op == "W*")
            path_.clips = true;
        else if (op == "S" || op == "s")
            end(true, false);
        else if (op == "f" || op == "f*" || op == "F")
            end(false, true);
        else if (op == "B" || op == "B*" || op == "b" || op == "b*")
            end(true, true);
        else if (op == "n")
            end(false, false);
    }

    struct State {
        Matrix matrix;
        double width = 1;
    };
    InkPage& page_;
    State state_;
    std::vector<State> stack_;
    InkPath path_;
};

std::string_view between(std::string_view text, std::string_view from, std::string_view to,
                         std::size_t start) {
    const std::size_t a = text.find(from, start);
    if (a == std::string_view::npos) return {};
    const std::size_t b = text.find(to, a + from.size());
    return b == std::string_view::npos ? std::string_view{}
                                       : text.substr(a + from.size(), b - a - from.size());
}

} // namespace

shape::Box InkPath::box() const {
    shape::Box box;
    for (const Vec p : points) box.add(p);
    return box;
}

std::string output_of(const std::string& command, int* exit) {
    std::string out;
    FILE* pipe = popen(command.c_str(), "r");
    if (!pipe) {
        ADD_FAILURE() << "can't run " << command;
        return out;
    }
    std::array<char, 4096> room;
    for (std::size_t n = 0; (n = fread(room.data(), 1, room.size(), pipe)) > 0;) out.append(room.data(), n);
    const int status = pclose(pipe);
    if (exit) *exit = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return out;
}

namespace {

// qpdf 11.3 warns (and ends with 3) where a long stream's bytes run out just as its own buffer is full; it
// has read the stream to its end all the same.
void expect_no_complaint(int exit, const std::string& said) {
    if (exit == 0) return;
    EXPECT_EQ(exit, 3) << "qpdf (Debian: qpdf) must read the file";
    std::ifstream lines(said);
    for (std::string line; std::getline(lines, line);)
        EXPECT_TRUE(line.find("input stream is complete but output may still be valid") !=
                        std::string::npos ||
                    line == "qpdf: operation succeeded with warnings")
            << line;
}

} // namespace

std::string file_of(const QByteArray& bytes, const std::string& name) {
    static const QTemporaryDir folder;
    static int count = 0;
    const QString path =
        folder.filePath(QStringLiteral("%1-%2").arg(++count).arg(QString::fromStdString(name)));
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
    return path.toStdString();
}

std::vector<InkPage> read_pdf(const QByteArray& pdf) {
    const std::string path = file_of(pdf, "in.pdf");
    const std::string said = path + ".said";
    int exit = 0;
    const std::string text =
        output_of("qpdf --qdf --object-streams=disable '" + path + "' - 2>'" + said + "'", &exit);
    expect_no_complaint(exit, said);
    std::vector<InkPage> pages;
    for (int number = 1;; ++number) {
        const std::string mark = "%% Page " + std::to_string(number) + "\n";
        const std::size_t at = text.find(mark);
        if (at == std::string::npos) return pages;
        InkPage page;
        std::vector<double> box;
        for (const auto word : tokens(between(text, "/MediaBox [", "]", at)))
            if (const auto value = parse_number(word)) box.push_back(*value);
        if (box.size() == 4) {
            page.width_mm = (box[2] - box[0]) * mm_per_pt;
            page.height_mm = (box[3] - box[1]) * mm_per_pt;
        }
        const std::size_t contents = text.find("%% Contents for page " + std::to_string(number) + "\n");
        EXPECT_NE(contents, std::string::npos);
        Reader(page).read(between(text, "stream\n", "endstream", contents));
        pages.push_back(std::move(page));
    }
}

} // namespace drawercast::test
