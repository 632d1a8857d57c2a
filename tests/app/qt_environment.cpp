// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/lettering.h"

#include <QGuiApplication>
#include <gtest/gtest.h>

#include <memory>

namespace {

/// Letters can be measured only while an application object lives.
class QtEnvironment final : public testing::Environment {
  public:
    void SetUp() override {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        application_ = std::make_unique<QGuiApplication>(count_, arguments_);
        ASSERT_TRUE(drawercast::theme::load_fonts());
    }
    void TearDown() override { application_.reset(); }

  private:
    int count_ = 1;
    char name_[9] = "test_app";
    char* arguments_[2] = {name_, nullptr};
    std::unique_ptr<QGuiApplication> application_;
};

const auto* const environment = testing::AddGlobalTestEnvironment(new QtEnvironment);

} // namespace
