// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain/formula.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace drawercast::app::explain {

namespace {

std::optional<double> applied(const QString& function, const std::vector<double>& to) {
    if (to.empty()) return std::nullopt;
    if (function == u"min") return *std::min_element(to.begin(), to.end());
    if (function == u"max") return *std::max_element(to.begin(), to.end());
    if (to.size() != 1) return std::nullopt;
    if (function == u"roundup") return std::ceil(to.front());
    if (function == u"exp") return std::exp(to.front());
    if (function == u"ln") return std::log(to.front());
    if (function == u"sin") return std::sin(to.front());
    if (function == u"asin") return std::asin(to.front());
    return std::nullopt;
}

/// By recursive descent; the first thing that can't be read makes all of it unreadable.
class Reader {
  public:
    Reader(const QString& text, const TermValue& term) : text_(text), term_(term) {}

    std::optional<double> all() {
        const double value = sum();
        skip_blanks();
        if (!fine_ || at_ != text_.size() || !std::isfinite(value)) return std::nullopt;
        return value;
    }

  private:
    double sum() {
        double value = product();
        while (fine_) {
            if (take(u'+'))
                value += product();
            else if (take(u'−') || take(u'-'))
                value -= product();
            else
                break;
        }
        return value;
    }

    double product() {
        double value = signed_power();
        while (fine_) {
            if (take(u'×'))
                value *= signed_power();
            else if (take(u'/'))
                value /= signed_power();
            else
                break;
        }
        return value;
    }

    double signed_power() {
        if (take(u'−') || take(u'-')) return -signed_power();
        const double base = atom();
        return take(u'^') ? std::pow(base, signed_power()) : base;
    }

    double atom() {
        skip_blanks();
        if (take(u'(')) return closed(sum());
        if (take(u'{')) return term();
        if (at_ < text_.size() && text_[at_].isLetter()) return function();
        return number();
    }

    double closed(double value) {
        if (!take(u')')) fine_ = false;
        return value;
    }

    double term() {
        const auto end = text_.indexOf(u'}', at_);
        if (end < 0) return failed();
        const auto value = term_(text_.mid(at_, end - at_));
        at_ = end + 1;
        return value ? *value : failed();
    }

    double function() {
        const auto from = at_;
        while (at_ < text_.size() && text_[at_].isLetter()) ++at_;
        const QString name = text_.mid(from, at_ - from);
        if (!take(u'(')) return failed();
        std::vector<double> arguments{sum()};
        while (fine_ && take(u',')) arguments.push_back(sum());
        closed(0);
        const auto value = applied(name, arguments);
        return value ? *value : failed();
    }

    double number() {
        const auto from = at_;
        while (at_ < text_.size() && (text_[at_].isDigit() || text_[at_] == u'.')) ++at_;
        bool read = false;
        const double value = QStringView(text_).mid(from, at_ - from).toDouble(&read); // in the C locale
        return read ? value : failed();
    }

    double failed() {
        fine_ = false;
        return 0;
    }

    void skip_blanks() {
        while (at_ < text_.size() && text_[at_].isSpace()) ++at_;
    }

    bool take(char16_t sign) {
        skip_blanks();
        if (!fine_ || at_ >= text_.size() || text_[at_] != sign) return false;
        ++at_;
        return true;
    }

    const QString& text_;
    const TermValue& term_;
    qsizetype at_ = 0;
    bool fine_ = true;
};

} // namespace

std::optional<double> evaluate(const QString& formula, const TermValue& term) {
    return Reader(formula, term).all();
}

QString with_terms(const QString& formula, const std::function<QString(const QString& key)>& words) {
    QString out;
    qsizetype from = 0;
    while (true) {
        const auto open = formula.indexOf(u'{', from);
        const auto close = formula.indexOf(u'}', open);
        if (open < 0 || close < 0) return out + formula.mid(from);
        out += formula.mid(from, open - from) + words(formula.mid(open + 1, close - open - 1));
        from = close + 1;
    }
}

} // namespace drawercast::app::explain
