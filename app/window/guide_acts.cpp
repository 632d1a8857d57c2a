// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/guide_acts.h"

#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "guide/guide_window.h"
#include "language/spoken.h"
#include "window/actions.h"
#include "window/help_texts.h"

#include <QAction>

namespace drawercast::app {

GuideActs::GuideActs(const Desk& desk, Actions& actions, QObject* parent)
    : QObject(parent), desk_(desk), actions_(actions) {
    actions.on("help.guide", [this] { open({}); });
    actions.on("help.keys", [this] { open(QStringLiteral("keys")); });
    actions.on("help.cautions", [this] { open(QStringLiteral("safety")); });
    actions.on("check.guide", [this] {
        if (const auto& check = desk_.selection.check()) {
            const auto code = layout::text_of(check->code);
            open(QString::fromLatin1(code.data(), static_cast<int>(code.size())));
        }
    });
    connect(&desk_.document, &Document::shown_changed, this, [this] {
        if (window_) window_->set_units(desk_.document.shown().display_units);
    });
}

GuideActs::~GuideActs() = default;

guide::GuideWindow& GuideActs::made() {
    if (window_) return *window_;
    guide::Answers answers;
    answers.units = desk_.document.shown().display_units;
    answers.action = [this](const QString& id) {
        return actions_.has(id.toStdString()) ? actions_[id.toStdString()]->toolTip() : QString();
    };
    answers.list = [this](const QString& name) {
        return name == QStringLiteral("keys")       ? keys_html(actions_)
               : name == QStringLiteral("cautions") ? cautions_html()
                                                    : QString();
    };
    window_ = std::make_unique<guide::GuideWindow>(answers, language::code_of(language::spoken_now()));
    connect(window_.get(), &guide::GuideWindow::action_wanted, this, [this](const QString& id) {
        if (!actions_.has(id.toStdString())) return;
        auto* action = actions_[id.toStdString()];
        if (action->isEnabled())
            action->trigger();
        else
            window_->say(tr("“%1” has nothing to act on just now.").arg(action->toolTip()));
    });
    return *window_;
}

void GuideActs::open(const QString& id) { made().open(id); }

void GuideActs::close() {
    if (window_) window_->close();
}

} // namespace drawercast::app
