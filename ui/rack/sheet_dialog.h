#pragma once

#include "core/shop/sheet.h"
#include "ui/desk/session.h"

#include <QDialog>

#include <atomic>
#include <memory>

class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QTableWidget;

namespace riband::ui {

class KeyButton;

/// A spreadsheet: which column holds what, what would be taken in, which rows are bad and why. A stock is
/// booked here, all or nothing; a delivery goes back to Goods in.
class SheetDialog final : public QDialog {
    Q_OBJECT
public:
    enum class For { Stock, Delivery };
    SheetDialog(Session& session, For what, QWidget* parent = nullptr);
    ~SheetDialog() override;
    std::vector<shop::Delivery> deliveries() const;
    /// Reads a file; false, and the reason is shown, if it is no table.
    bool load(const QString& path);
    bool working() const { return stop_ != nullptr; }

private:
    void buildView();
    void choose();
    void showColumns();
    void read();
    void showSheet();
    QString guessWords(int remnants) const;
    void accept() override;
    void reject() override;
    void booked(const QString& failure, std::size_t pieces);
    shop::SheetMatch match() const;

    Session& session_;
    For for_;
    QLineEdit* path_;
    QComboBox* unit_;
    QTableWidget *columns_, *rows_;
    QLabel* verdict_;
    QProgressBar* progress_;
    KeyButton* take_ = nullptr;
    std::optional<CsvTable> table_;
    bool matched_ = false; ///< a person said what columns hold
    shop::Sheet sheet_;
    std::shared_ptr<std::atomic_bool> stop_; ///< of what is being booked
};

} // namespace riband::ui
