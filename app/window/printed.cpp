// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/printed.h"

#include "job/fingerprint.h"
#include "job/shown_name.h"

#include "document/preferences.h"
#include "language/spoken.h"

#include <QCryptographicHash>
#include <QJsonDocument>
#include <QJsonObject>

namespace drawercast::app {

namespace {

using language::tr;

/// A path as a key of the settings, which take no slashes in one.
QString key_of(const QString& path) {
    return QStringLiteral("printed-") +
           QString::fromLatin1(QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha1).toHex());
}

const QString revision = QStringLiteral("revision"), whole = QStringLiteral("job"),
              drawers = QStringLiteral("drawers");

} // namespace

void remember_printed(const QString& path, const job::Job& job, Preferences& preferences) {
    if (path.isEmpty()) return;
    QJsonObject each;
    for (const auto& drawer : job.drawers)
        each[QString::fromStdString(drawer->id)] =
            QString::fromStdString(job::drawer_fingerprint(job, drawer->id));
    const QJsonObject kept{
        {revision, job.revision}, {whole, QString::fromStdString(job::fingerprint(job))}, {drawers, each}};
    preferences.set_window_state(key_of(path), QJsonDocument(kept).toJson(QJsonDocument::Compact));
}

QString changed_since_printed(const QString& path, const job::Job& job, const Preferences& preferences) {
    if (path.isEmpty()) return {};
    const auto kept = QJsonDocument::fromJson(preferences.window_state(key_of(path))).object();
    if (kept.isEmpty() || kept[whole].toString().toStdString() == job::fingerprint(job)) return {};
    QStringList old;
    const auto each = kept[drawers].toObject();
    for (const auto& drawer : job.drawers)
        if (each[QString::fromStdString(drawer->id)].toString().toStdString() !=
            job::drawer_fingerprint(job, drawer->id))
            old << QString::fromStdString(job::shown_name(*drawer));
    const QString since =
        tr("Changed since the templates of rev. %1 were printed").arg(kept[revision].toInt());
    return old.isEmpty() ? tr("%1, but nothing on them.").arg(since)
                         : tr("%1. Print again the templates of: %2.").arg(since, old.join(", "));
}

} // namespace drawercast::app
