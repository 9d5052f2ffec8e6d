#include "tests/catch.h"

#include "resources/table_texts.h"
#include "ui/drawing/band.h"
#include "ui/drawing/tooth.h"
#include "ui/look/card_tabs.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/look/slip.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QProgressBar>
#include <QRadioButton>
#include <QSpinBox>
#include <QTableWidget>
#include <QVBoxLayout>

using namespace riband;
using namespace riband::ui;

/// Pictures of everything that this folder draws, to be looked at: run this test by its tag, `[gallery]`.
namespace {

BandPicture finishing() {
    using Part = BandPicture::Part;
    const Extent thirty = Width::millimetres(30);
    return {Width::micrometres(128'500),
            {{Part::Trim, Width::micrometres(2500), "2.5", ""},
             {Part::Belt, thirty, "30", "first cut"},
             {Part::Belt, thirty, "30", "second cut"},
             {Part::Belt, thirty, "30", "third cut"},
             {Part::ShelfBelt, thirty, "30", "to the shelf"},
             {Part::Lost, Width::millimetres(6), "6", "lost"}},
            0};
}

BandPicture narrow() {
    using Part = BandPicture::Part;
    BandPicture picture{Width::millimetres(470), {{Part::Trim, Width::micrometres(2500), "2.5", ""}}, 0};
    for (int i = 0; i < 24; ++i)
        picture.strips.push_back({Part::Belt, Width::micrometres(6400), "6.4", "cut"});
    picture.strips.push_back({Part::Belt, Width::millimetres(50), "50", "cut 25"});
    picture.strips.push_back({Part::Kept, Width::micrometres(263'900), "263.9", "stays"});
    return picture;
}

BandPicture ribs() {
    using Part = BandPicture::Part;
    return {Ribs{40},
            {{Part::Trim, Ribs{1}, "1", ""},
             {Part::Belt, Ribs{6}, "6", "first cut"},
             {Part::Belt, Ribs{6}, "6", "second cut"},
             {Part::ShelfBelt, Ribs{4}, "4", "to the shelf"},
             {Part::Kept, Ribs{23}, "23", "stays"}},
            0};
}

QWidget* label(const QString& text, const char* role) {
    auto* made = new QLabel{text};
    made->setProperty("role", role);
    return made;
}

QWidget* band(const BandPicture& picture, BandSize size) {
    auto* made = new BandWidget{size};
    made->show(picture);
    return made;
}

QTableWidget* table() {
    auto* made = new QTableWidget{4, 4};
    made->setHorizontalHeaderLabels({"Piece", "Belt", "Width", "Place"});
    for (int r = 0; r < 4; ++r)
        for (int c = 0; c < 4; ++c)
            made->setItem(r, c, new QTableWidgetItem{QString("7K%1-%2").arg(r).arg(c)});
    made->verticalHeader()->hide();
    made->setShowGrid(false);
    made->verticalHeader()->setDefaultSectionSize(40);
    made->setSelectionBehavior(QAbstractItemView::SelectRows);
    made->selectRow(1);
    made->horizontalHeader()->setStretchLastSection(true);
    return made;
}

QFrame* surface(const char* name) {
    auto* made = new QFrame;
    made->setProperty("surface", name);
    new QVBoxLayout{made};
    return made;
}

QWidget* inputs() {
    auto* row = new QWidget;
    auto* box = new QHBoxLayout{row};
    box->setContentsMargins(0, 0, 0, 0);
    auto* combo = new QComboBox;
    combo->addItems({"H8M", "T10", "PJ"});
    auto* check = new QCheckBox{"cut the shelf belt too"};
    check->setChecked(true);
    auto* radio = new QRadioButton{"ribs"};
    radio->setChecked(true);
    auto* wrong = new QLineEdit{"817L"};
    wrong->setProperty("wrong", "true");
    auto* progress = new QProgressBar;
    progress->setValue(40);
    for (QWidget* w :
         std::initializer_list<QWidget*>{new QLineEdit{"Grażyna Łęcka"}, wrong, combo, new QSpinBox, check,
                                         new QCheckBox{"off"}, radio, progress})
        box->addWidget(w);
    return row;
}

QWidget* leftCard() {
    auto* card = surface("card");
    auto* box = qobject_cast<QVBoxLayout*>(card->layout());
    auto* typed = new QLineEdit{"3 x h8m 1200 30"};
    typed->setProperty("use", "main");
    box->addWidget(typed);
    box->addWidget(inputs());
    auto* advice = surface("advice");
    advice->layout()->addWidget(label("Cut the remnant 7K2-M", "head"));
    advice->layout()->addWidget(band(finishing(), BandSize::Large));
    advice->layout()->addWidget(label("Saves 31 mm against a new sleeve.", "gain"));
    box->addWidget(advice);
    box->addWidget(band(narrow(), BandSize::Large));
    box->addWidget(band(ribs(), BandSize::Large));
    BandPicture small = finishing();
    small.fullScale = 470'000;
    box->addWidget(band(small, BandSize::Small));
    box->addWidget(band(narrow(), BandSize::Small));
    box->addWidget(table());
    return card;
}

QWidget* rightSlip() {
    auto* slip = new Slip;
    auto* box = new QVBoxLayout{slip};
    box->addWidget(label("Order N11-4", "part"));
    box->addWidget(label("walk-in", "remark"));
    box->addWidget(label("not for S8M or R8M pulleys", "warn"));
    box->addWidget(label("width taken by another order", "danger"));
    box->addWidget(label("Ledger balanced", "ok"));
    box->addWidget(label("105.54", "total"));
    box->addStretch();
    box->addWidget(new KeyButton{"Order and ticket", QKeySequence{"F9"}, KeyButton::Rank::Likely});
    auto* off = new KeyButton{"Record the cut", QKeySequence{"F9"}, KeyButton::Rank::Likely};
    off->setEnabled(false);
    box->addWidget(off);
    auto* row = new QHBoxLayout;
    row->addWidget(new KeyButton{"Quote", QKeySequence{"F8"}});
    row->addWidget(new KeyButton{"Park", QKeySequence{"F7"}});
    row->addWidget(new KeyButton{"Scrap", QKeySequence{"Del"}, KeyButton::Rank::Danger});
    box->addLayout(row);
    auto* check = new KeyButton{"cut the shelf belt too", QKeySequence{"S"}};
    check->setCheckable(true);
    check->setChecked(true);
    box->addWidget(check);
    return slip;
}

void paintGallery(Shade shade, const QSize& size, const QString& name) {
    Look::apply(*qobject_cast<QApplication*>(QCoreApplication::instance()), shade);
    QWidget page;
    page.setObjectName("page");
    auto* all = new QVBoxLayout{&page};
    all->setSpacing(0);
    auto* tabs = new CardTabBar;
    int key = 1;
    for (const char* card : {"Counter", "Bench", "Rack", "Tally", "Review", "Shop"})
        tabs->addCard(card, QKeySequence{QString("Ctrl+%1").arg(key++)});
    tabs->setWaiting(1, 4);
    all->addWidget(tabs);
    auto* row = new QHBoxLayout;
    row->addWidget(leftCard(), 1);
    auto* slip = rightSlip();
    slip->setFixedWidth(392);
    row->addWidget(slip);
    all->addLayout(row);
    page.resize(size);
    page.ensurePolished();
    page.show();
    page.findChild<QLineEdit*>()->setFocus();
    QApplication::processEvents();
    QDir{RIBAND_BINARY_DIR}.mkpath("pictures");
    CHECK(page.grab().save(QString{RIBAND_BINARY_DIR} + "/pictures/" + name));
    Look::apply(*qobject_cast<QApplication*>(QCoreApplication::instance()), Shade::Light);
}

} // namespace

TEST_CASE("The gallery of the teeth is painted", "[.gallery]") {
    const auto tables = belt::Tables::load(tableTexts());
    REQUIRE(tables.ok());
    QImage image{1500, 1330, QImage::Format_RGB32};
    image.fill(Look::current().card);
    QPainter painter{&image};
    int i = 0;
    for (const auto& profile : tables.value()->profiles()) {
        const QRectF cell(20 + i % 8 * 185, 10 + i / 8 * 160, 165, 130);
        paintTeeth(painter, cell.adjusted(0, 20, 0, 0), profile, 3, Look::current());
        painter.setPen(Look::current().ink);
        painter.drawText(cell, QString::fromStdString(profile.name) +
                                   (toothIsApproximate(profile) ? " about" : ""));
        ++i;
    }
    painter.end();
    CHECK(image.save(QString{RIBAND_BINARY_DIR} + "/pictures/teeth.png"));
}

TEST_CASE("The gallery of the look is painted", "[.gallery]") {
    paintGallery(Shade::Light, {1366, 860}, "look-light.png");
    paintGallery(Shade::Dark, {1366, 860}, "look-dark.png");
    paintGallery(Shade::Light, {1920, 1080}, "look-wide.png");
}
