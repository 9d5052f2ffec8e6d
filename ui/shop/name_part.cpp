#include "ui/shop/name_part.h"

#include "ui/words/tr.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace riband::ui {

NamePart::NamePart(QWidget* parent)
    : SettingsPart{parent}, name_{new QLineEdit}, address_{new QPlainTextEdit}, paper_{new QComboBox} {
    name_->setAccessibleName(tr("Name of the shop"));
    address_->setAccessibleName(tr("Address"));
    address_->setTabChangesFocus(true);
    address_->setMaximumHeight(110);
    paper_->setAccessibleName(tr("Paper"));
    paper_->addItem(tr("A4"), QStringLiteral("A4"));
    paper_->addItem(tr("Letter"), QStringLiteral("Letter"));
    auto* form = new QFormLayout{this};
    form->addRow(tr("&Name of the shop"), name_);
    form->addRow(tr("&Address"), address_);
    form->addRow(tr("&Paper"), paper_);
    connect(name_, &QLineEdit::textEdited, this, &SettingsPart::edited);
    connect(address_, &QPlainTextEdit::textChanged, this, &SettingsPart::edited);
    connect(paper_, &QComboBox::activated, this, &SettingsPart::edited);
}

void NamePart::show(const store::ShopSettings& settings) {
    name_->setText(text(settings.name));
    address_->setPlainText(text(settings.address));
    paper_->setCurrentIndex(settings.paper == "Letter" ? 1 : 0);
}

bool NamePart::write(store::ShopSettings& settings) const {
    settings.name = name_->text().trimmed().toStdString();
    settings.address = address_->toPlainText().trimmed().toStdString();
    settings.paper = paper_->currentData().toString().toStdString();
    return true;
}

} // namespace riband::ui
