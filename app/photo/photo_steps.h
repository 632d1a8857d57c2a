// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "photo/photo_outline.h"
#include "photo/photo_worker.h"

#include <QString>

#include <memory>
#include <string>

namespace drawercast::app::photo {

/// The photo and all that was made of it, as one value.
struct State {
    std::shared_ptr<const std::string> file; ///< its bytes; null: none yet, or none that is a picture
    QString file_name;
    Flat flat; ///< null: none, or it was refused
    std::vector<Outline> outlines;
    std::vector<Stroke> strokes;
    bool looked = true; ///< the outlines are those of the strokes
    std::optional<Problem> refusal;

    State of_file() const { return {file, file_name, {}, {}, {}, true, {}}; } ///< nothing measured in it yet
};

/// The dialog's own undo, by values.
class Steps {
  public:
    const State& now() const { return states_[at_]; }
    /// One step. Where `typing` is that of the step before (a field of an outline) and not empty, both are
    /// one.
    void push(State state, const QString& typing = {});
    /// An answer to the step, not one of its own.
    void replace(State state) { states_[at_] = std::move(state); }
    bool can_undo() const { return at_ > 0; }
    bool can_redo() const { return at_ + 1 < states_.size(); }
    void undo();
    void redo();

  private:
    std::vector<State> states_{State{}};
    std::size_t at_ = 0;
    QString typing_;
};

} // namespace drawercast::app::photo
