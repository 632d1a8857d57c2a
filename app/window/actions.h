// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAction>
#include <QObject>

#include <functional>
#include <map>
#include <string_view>
#include <vector>

namespace drawercast::app {

/// What there is to act on; by this each action is enabled or not.
struct Situation {
    bool drawer = false;        ///< one is shown
    bool plan_sheet = true;     ///< a sheet that objects are arranged on is shown
    bool other_drawers = false; ///< besides the shown one
    bool object = false;        ///< chosen in the list
    bool objects = false;       ///< the job has some
    bool drawer_pockets = false;
    bool unplaced = false;   ///< an object is placed nowhere yet
    bool loose = false;      ///< the drawer has pockets that are not locked
    int pockets = 0;         ///< chosen
    int free = 0;            ///< of them, not locked
    bool notches = false;    ///< the last chosen pocket has some
    bool build_up = false;   ///< the picture that can be turned is shown
    bool vent_sheet = false; ///< a sheet with vents is shown, and there is an answer
    bool vent = false;       ///< one is chosen there
    bool vent_kept = false;  ///< it is the maker's own
    bool own_vents = false;  ///< the drawer has vents of the maker's, or none are placed beside them
    bool can_undo = false;
    bool can_redo = false;
    bool check = false;      ///< one of the drawer is chosen, not left as is
    bool look = false;       ///< the chosen check can be left as is
    bool left_as_is = false; ///< the chosen check was
    bool checks = false;     ///< there are some
    bool any_check = false;  ///< one is chosen, be it of the job as a whole or left as is
};

/// One line of the table of actions.
struct ActionSpec {
    std::string_view id; ///< "place.turn": menu and act
    const char* text;    ///< with its mnemonic, in the context "Actions"
    const char* icon;    ///< name in theme/icons.h; "": none
    const char*
        keys; ///< portable text of a QKeySequence; more of them parted by ", " (a comma key: write it last)
    bool (*enabled)(const Situation&);
    bool checkable = false;
};
const std::vector<ActionSpec>& action_specs();

/// The actions of a window, made from the table; what they do is told by whoever knows.
class Actions : public QObject {
    Q_OBJECT
  public:
    explicit Actions(QObject* parent = nullptr);

    QAction* operator[](std::string_view id) const; ///< demands a known id
    bool has(std::string_view id) const { return actions_.count(id) != 0; }
    void on(std::string_view id, std::function<void()> act);
    /// Asked before what the action does otherwise; true: that was all.
    void first(std::string_view id, std::function<bool()> act);
    void update(const Situation& situation);
    std::vector<QAction*> all() const; ///< in the table's order
    bool has_act(std::string_view id) const { return acts_.count(std::string(id)) != 0; }

  private:
    std::map<std::string, QAction*, std::less<>> actions_;
    std::map<std::string, std::function<void()>, std::less<>> acts_;
};

} // namespace drawercast::app
