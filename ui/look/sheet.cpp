#include "ui/look/sheet.h"

#include <QStyle>
#include <QVariant>
#include <QWidget>

#include <array>
#include <utility>

namespace riband::ui {
namespace {

// Inputs name no colour of text here: Qt would then fade what they show while empty, under the contrast that
// the palette has. Borders of inputs are 2 pixels always, so that nothing moves when the focus comes.
constexpr const char* sheet = R"(
QMainWindow, QDialog { background: @ground; }
QFrame[surface="ground"] { background: @ground; border: none; }
QFrame[surface="card"] { background: @card; border: none; border-radius: 6px; }
QFrame[surface="sunk"] { background: @sunk; border: none; border-radius: 4px; }
QFrame[surface="tile"] { background: @card; border: 1px solid @line; border-radius: 6px; }
QFrame[surface="tile"][chosen="true"] { border: 2px solid @cool; }
QFrame[surface="advice"] {
    background: @sunk; border: none; border-left: 5px solid @warmFill;
    border-top-right-radius: 4px; border-bottom-right-radius: 4px;
}
QFrame[surface="line"] { background: @line; border: none; min-height: 1px; max-height: 1px; }

QLabel { background: transparent; }
QLabel[role="typed"] { font-size: 30px; }
QLabel[role="far"] { font-size: 72px; font-weight: 600; }
QLabel[role="saidOk"] { font-size: 30px; font-weight: 600; color: @ok; }
QLabel[role="saidWarn"] { font-size: 30px; font-weight: 600; color: @warm; }
QLabel[role="total"] { font-size: 34px; font-weight: 600; }
QLabel[role="head"] { font-size: 20px; font-weight: 600; }
QLabel[role="part"] { font-size: 18px; font-weight: 600; }
QLabel[role="strong"] { font-size: 15px; font-weight: 600; }
QLabel[role="remark"] { font-size: 13px; color: @ink2; }
QLabel[role="small"] { font-size: 12px; color: @ink2; }
QLabel[role="warn"] { font-weight: 500; color: @warm; }
QLabel[role="gain"] { font-weight: 600; color: @cool; }
QLabel[role="danger"] { font-weight: 600; color: @danger; }
QLabel[role="ok"] { font-weight: 600; color: @ok; }

QLineEdit, QComboBox, QAbstractSpinBox, QPlainTextEdit, QTextEdit {
    background: @card; border: 2px solid @line; border-radius: 6px; padding: 4px 9px;
    selection-background-color: @cool; selection-color: @onCool; font-size: 15px;
}
QLineEdit, QComboBox, QAbstractSpinBox { min-height: 26px; }
QLineEdit:focus, QComboBox:focus, QAbstractSpinBox:focus, QPlainTextEdit:focus, QTextEdit:focus,
QComboBox:on { border-color: @cool; }
QLineEdit[wrong="true"], QAbstractSpinBox[wrong="true"] { border-color: @danger; }
QLineEdit:disabled, QComboBox:disabled, QAbstractSpinBox:disabled { background: @sunk; color: @ink2; }
QLineEdit[readOnly="true"] { background: @sunk; }
QLineEdit[use="main"] { background: @sunk; font-size: 30px; padding: 8px 18px; min-height: 44px; }
QAbstractSpinBox QLineEdit, QComboBox QLineEdit {
    border: none; padding: 0; min-height: 0; background: transparent;
}
QComboBox::drop-down { border: none; width: 30px; }
QComboBox::down-arrow { image: url(:/icons/arrow-down.svg); width: 16px; height: 16px; }
QAbstractSpinBox { padding-right: 30px; }
QAbstractSpinBox::up-button { border: none; background: transparent; width: 28px; subcontrol-position: top right; }
QAbstractSpinBox::down-button { border: none; background: transparent; width: 28px; subcontrol-position: bottom right; }
QAbstractSpinBox::up-arrow { image: url(:/icons/arrow-up.svg); width: 16px; height: 16px; }
QAbstractSpinBox::down-arrow { image: url(:/icons/arrow-down.svg); width: 16px; height: 16px; }
QAbstractSpinBox[buttonSymbols="2"] { padding-right: 9px; }
QComboBox QAbstractItemView {
    background: @card; border: 1px solid @line; outline: none; padding: 4px;
    selection-background-color: @cool; selection-color: @onCool;
}
QComboBox QAbstractItemView::item { min-height: 38px; padding: 0 8px; }

QPushButton {
    background: @card; color: @ink; border: 2px solid @line; border-radius: 6px; padding: 6px 14px;
    font-size: 14px; font-weight: 500; min-height: 22px;
}
QPushButton:hover { background: @sunk; }
QPushButton:pressed { background: @line; }
QPushButton:focus { border-color: @cool; }
QPushButton:default { background: @cool; color: @onCool; border-color: @cool; font-weight: 600; }
QPushButton:default:focus { border-color: @ink; }
QPushButton:disabled { background: @sunk; color: @ink2; border-color: @line; }
QToolButton { background: transparent; border: 2px solid transparent; border-radius: 6px; padding: 6px;
    min-height: 22px; }
QToolButton:hover { background: @sunk; }
QToolButton:focus { border-color: @cool; }
QCheckBox, QRadioButton { min-height: 38px; spacing: 9px; padding: 0 6px; background: transparent;
    border: 2px solid transparent; border-radius: 6px; min-height: 34px; }
QCheckBox:focus, QRadioButton:focus { border-color: @cool; }
QCheckBox::indicator, QRadioButton::indicator { width: 16px; height: 16px; }

QGroupBox { border: none; margin-top: 24px; font-size: 13px; font-weight: 600; color: @ink2; }
QGroupBox::title { subcontrol-origin: margin; left: 0; padding: 0; color: @ink2; }

QAbstractItemView {
    background: @card; alternate-background-color: @sunk; border: 2px solid transparent; outline: none;
    gridline-color: @line; selection-background-color: @sunk; selection-color: @ink; font-size: 14px;
}
QAbstractItemView:focus { border-color: @cool; border-radius: 4px; }
QTableView::item, QTreeView::item, QListView::item { padding: 0 8px; border: none;
    border-bottom: 1px solid @line; min-height: 38px; }
QTableView::item:selected, QTreeView::item:selected, QListView::item:selected {
    background: @rest; color: @ink; border-top: 1px solid @cool; border-bottom: 1px solid @cool;
}
QTableView::item:selected:active, QTreeView::item:selected:active, QListView::item:selected:active {
    background: @rest; color: @ink; border-top: 2px solid @cool; border-bottom: 2px solid @cool;
}
QListView[rows="two"]::item { padding: 5px 8px; }
QTableView[rows="dense"]::item { padding: 0 3px; }
QHeaderView[rows="dense"]::section { padding: 8px 4px; }
QTableView[rows="close"] { font-size: 13px; }
QTableView[rows="close"]::item { padding: 0 3px; min-height: 28px; }
QHeaderView { background: @card; border: none; }
QHeaderView::section {
    background: @card; color: @ink2; border: none; border-bottom: 2px solid @line; padding: 8px 8px;
    font-size: 13px; font-weight: 600;
}
QHeaderView::section:hover { color: @ink; }
QTableCornerButton::section { background: @card; border: none; }

QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; border: none; }
QScrollBar:vertical { background: transparent; width: 12px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 0; }
QScrollBar::handle { background: @line; border-radius: 4px; margin: 2px; min-width: 38px; min-height: 38px; }
QScrollBar::handle:hover { background: @ink2; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }

QProgressBar { background: @sunk; border: 1px solid @line; border-radius: 4px; min-height: 18px;
    text-align: center; color: @ink; font-size: 12px; }
QProgressBar::chunk { background: @warmFill; border-radius: 3px; }
QToolTip { background: @card; color: @ink; border: 1px solid @line; padding: 6px; font-size: 13px; }
QMenuBar { background: @ground; color: @ink; font-size: 14px; }
QMenuBar::item { padding: 8px 10px; background: transparent; }
QMenuBar::item:selected { background: @tab; }
QMenu { background: @card; border: 1px solid @line; padding: 6px; font-size: 14px; }
QMenu::item { padding: 9px 28px 9px 14px; border-radius: 4px; }
QMenu::item:selected { background: @cool; color: @onCool; }
QMenu::item:disabled { color: @ink2; }
QMenu::separator { height: 1px; background: @line; margin: 6px 8px; }
QStatusBar { background: @ground; color: @ink2; font-size: 13px; }
QStatusBar::item { border: none; }
QSplitter::handle { background: transparent; }
)";

using Token = std::pair<QLatin1String, QColor Look::*>;

// Longer names first: "@ink2" would else be read as "@ink" and a 2.
const std::array<Token, 16> tokens{{{QLatin1String{"@warmFill"}, &Look::warmFill},
                                    {QLatin1String{"@coolFill"}, &Look::coolFill},
                                    {QLatin1String{"@ground"}, &Look::ground},
                                    {QLatin1String{"@danger"}, &Look::danger},
                                    {QLatin1String{"@onFill"}, &Look::onFill},
                                    {QLatin1String{"@onCool"}, &Look::onCool},
                                    {QLatin1String{"@card"}, &Look::card},
                                    {QLatin1String{"@sunk"}, &Look::sunk},
                                    {QLatin1String{"@ink2"}, &Look::ink2},
                                    {QLatin1String{"@line"}, &Look::line},
                                    {QLatin1String{"@warm"}, &Look::warm},
                                    {QLatin1String{"@cool"}, &Look::cool},
                                    {QLatin1String{"@rest"}, &Look::rest},
                                    {QLatin1String{"@tab"}, &Look::tab},
                                    {QLatin1String{"@ink"}, &Look::ink},
                                    {QLatin1String{"@ok"}, &Look::ok}}};

} // namespace

QString styleSheet(const Look& look) {
    QString text = QString::fromLatin1(sheet);
    for (const auto& [name, colour] : tokens)
        text.replace(name, (look.*colour).name());
    return text;
}

void setSheetProperty(QWidget& widget, const char* name, const QString& value) {
    if (widget.property(name).toString() == value) return;
    widget.setProperty(name, value);
    widget.style()->unpolish(&widget);
    widget.style()->polish(&widget);
    widget.update();
}

} // namespace riband::ui
