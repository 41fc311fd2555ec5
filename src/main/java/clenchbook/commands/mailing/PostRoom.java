package clenchbook.commands.mailing;

import clenchbook.commands.opening.RunFault;
import clenchbook.delivery.QueuedMail;
import clenchbook.delivery.message.HeaderText;
import clenchbook.delivery.message.MailAddress;
import clenchbook.delivery.message.MailMessage;
import clenchbook.delivery.message.MailText;
import clenchbook.delivery.message.OutgoingMail;
import clenchbook.delivery.wording.MailWord;
import clenchbook.delivery.wording.WordingFault;
import clenchbook.delivery.wording.WordingReader;
import clenchbook.print.files.CsvText;
import clenchbook.print.files.OutputFile;
import clenchbook.print.files.SafeFileNames;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.texts.Message;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Sorts a month's post: a mail for each owner who can get one, a line of the print list for each of
 * the others.
 */
public final class PostRoom {
  /** The list of those whose post has to be printed. */
  public static final String PRINT_LIST = "print-list.csv";

  private static final List<String> COLUMNS =
      List.of("owner", "invoice_name", "address", "numbers", "files", "reason");

  private final Optional<MailAddress> from;
  private final Path besideWorkbook;
  private final Map<String, WordingReader.Reading> wordings = new TreeMap<>();
  private final List<QueuedMail> mails = new ArrayList<>();
  private final List<List<String>> toPrint = new ArrayList<>();
  private final List<Message> unreadable = new ArrayList<>();

  /**
   * An empty room.
   *
   * @param from the farrier's address; without one all post is printed
   * @param besideWorkbook the workbook's folder, for the farrier's own wording
   */
  public PostRoom(Optional<MailAddress> from, Path besideWorkbook) {
    this.from = from;
    this.besideWorkbook = besideWorkbook;
  }

  /**
   * Sorts the post.
   *
   * @param posts in the order of the owners' names
   * @param again whose mail is to be repeated
   * @throws RunFault where one of those has no mail
   */
  public void sort(List<OwnerPost> posts, RepeatedMail again) {
    for (OwnerPost post : posts) {
      List<MailAddress> to = MailAddress.parseAll(post.email());
      if (!to.isEmpty() && from.isPresent()) {
        OutgoingMail mail = mail(post, from.get(), to);
        mails.add(new QueuedMail(post.id(), mail, again.isAsked(post.owner()), post.formerly()));
      } else {
        toPrint.add(printLine(post));
        if (!post.email().isBlank()) {
          unreadable.add(
              Message.of("commands.mail.printInstead", HeaderText.clean(post.owner()), why(post)));
        }
      }
    }
    again.check(mails.stream().map(queued -> queued.id().owner()).toList());
  }

  private OutgoingMail mail(OwnerPost post, MailAddress sender, List<MailAddress> to) {
    Map<MailWord, String> words = MailWords.of(post);
    if (words.getOrDefault(MailWord.BUSINESS, "").isBlank()) {
      words.put(MailWord.BUSINESS, sender.text());
    }
    MailText text = wording(post.head().locale().language()).wording().write(words);
    return new OutgoingMail(
        post.owner(),
        to,
        sender,
        HeaderText.clean(post.head().from().name()),
        text,
        post.month().atEndOfMonth(),
        post.files());
  }

  private WordingReader.Reading wording(String language) {
    return wordings.computeIfAbsent(
        WordingReader.builtIn(language).language(),
        code -> WordingReader.read(code, besideWorkbook));
  }

  private List<String> printLine(OwnerPost post) {
    return List.of(
        post.owner(),
        post.head().to().name(),
        String.join(", ", post.head().to().address()),
        String.join(" ", post.numbers()),
        post.files().stream().map(file -> file.fileName()).collect(Collectors.joining("; ")),
        reason(post));
  }

  private String reason(OwnerPost post) {
    if (post.email().isBlank()) {
      return "no mail address";
    }
    return MailAddress.parseAll(post.email()).isEmpty()
        ? "the mail address cannot be read: " + HeaderText.clean(post.email())
        : "Settings have no From address that mail can be sent from";
  }

  private static Message why(OwnerPost post) {
    return MailAddress.parseAll(post.email()).isEmpty()
        ? Message.of("commands.mail.addressUnread", HeaderText.clean(post.email()))
        : Message.of("commands.mail.noFrom");
  }

  /** The mails, in the order of the owners' names. */
  public List<QueuedMail> mails() {
    return List.copyOf(mails);
  }

  /** How many owners get theirs on paper. */
  public int printed() {
    return toPrint.size();
  }

  /** A line for each owner whose address cannot be mailed to. */
  public List<Message> unreadable() {
    return unreadable;
  }

  /** What of the farrier's own wording could not be used, by language. */
  public List<WordingFault> wordingFaults() {
    return wordings.values().stream().flatMap(reading -> reading.faults().stream()).toList();
  }

  /** The files of the outbox by name: a mail each, and the print list. */
  public SortedMap<String, OutputFile> files() {
    SafeFileNames names = new SafeFileNames();
    SortedMap<String, OutputFile> files = new TreeMap<>();
    for (QueuedMail queued : mails) {
      MailMessage message = MailMessage.of(queued.mail());
      files.put(names.name(queued.mail().owner(), ".eml"), out -> out.write(message.outboxBytes()));
    }
    files.put(PRINT_LIST, OutputFile.of(CsvText.of(printList())));
    return files;
  }

  private FigureTable printList() {
    return new FigureTable(PRINT_LIST, COLUMNS, toPrint);
  }
}
