#include "book/seal_after.h"

#include "book/connection.h"

namespace rangeline::test {

std::optional<BookFault> sealAfter(Book& book, ItemId lesson, const char* sql) {
    return book.write([&](Connection& connection, Book::Touched& touched) {
        connection.run(sql);
        touched.push_back(lesson);
    });
}

}  // namespace rangeline::test
