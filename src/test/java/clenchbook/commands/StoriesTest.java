package clenchbook.commands;

import java.nio.file.Path;

/** The stories, walked in this process. */
class StoriesTest extends Stories {
  @Override
  Typed typed(String command, Path book, String... options) {
    return Typed.type(command, book, options);
  }
}
