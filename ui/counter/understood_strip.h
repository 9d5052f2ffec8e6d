#pragma once

#include "core/belt/reader.h"

#include <QStringList>
#include <QWidget>

class QHBoxLayout;
class QLabel;

namespace riband::ui {

class ToothWidget;

/// What was understood: the tooth, profile, length, width with its tolerance, how many, and what to beware
/// of.
class UnderstoodStrip final : public QWidget {
    Q_OBJECT
public:
    explicit UnderstoodStrip(const belt::Tables& tables, QWidget* parent = nullptr);
    /// `made`: body and cord, "rubber, glass cord"; "" if not known. `hard`: what the cutter is not made for.
    void show(const belt::Reading& reading, const QString& made, const QStringList& hard = {});
    void clear();

private:
    struct Part {
        QWidget* box;
        QLabel* main;
        QLabel* remark;
    };
    Part addPart(QHBoxLayout* row, bool divided);
    void showSizes(const belt::Reading& reading, const belt::Profile& profile);
    void showRemarks(const belt::Reading& reading, const QString& made, const QStringList& hard);

    const belt::Tables& tables_;
    ToothWidget* tooth_;
    Part profile_, length_, width_, quantity_;
    QLabel* beware_;
    QLabel* remarks_;
};

/// "not for S8M or R8M pulleys"; "" if nothing looks alike.
QString lookAlikeWarning(const std::string& profile, const belt::Tables& tables);

} // namespace riband::ui
