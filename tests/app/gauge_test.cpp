#include "tests/app/printing.h"
#include "tests/app/program.h"

using namespace riband::tests;

TEST_CASE("riband gauge writes the card as a PDF on the paper that is asked for", "[app][gauge]") {
    const Folder folder;
    const auto [paper, box] = GENERATE(
        table<QString, QByteArray>({{"A4", "842"}, {"Letter", "792"}})); // points, across: 297 mm and 11 in
    const QString file = folder.file("card.pdf");
    const Answer answer = run({"gauge", "--out", file, "--paper", paper, "--json"});
    CHECK(answer.exit == 0);
    CHECK(answer.json()["file"] == file);
    CHECK(answer.json()["pages"].toInt() > 1);
    const QByteArray pdf = folder.content("card.pdf");
    CHECK(pdf.startsWith("%PDF-"));
    CHECK(pdf.contains("/MediaBox [0 0 " + box));
}

TEST_CASE("riband gauge says what it can't do and leaves nothing half written", "[app][gauge]") {
    const Folder folder;
    CHECK(run({"gauge"}).exit == 2);
    const Answer paper = run({"gauge", "--out", folder.file("card.pdf"), "--paper", "A5"});
    CHECK(paper.exit == 2);
    CHECK(paper.err.contains("A4 or Letter"));
    CHECK(folder.content("card.pdf").isEmpty());
    const Answer nowhere = run({"gauge", "--out", folder.file("none/card.pdf")});
    CHECK(nowhere.exit == 2);
    CHECK(nowhere.err.contains("can't be written"));
}
