package bedledger.cli;

import bedledger.cli.due.DueCommand;
import bedledger.cli.due.TodayCommand;
import bedledger.cli.exchange.Export;
import bedledger.cli.packet.InspectCommand;
import bedledger.cli.packet.PacketCommand;
import bedledger.cli.prove.BalanceCommand;
import bedledger.cli.prove.Check;
import bedledger.cli.prove.GapsCommand;
import bedledger.cli.prove.MakeCheckpoint;
import bedledger.cli.prove.MockAuditCommand;
import bedledger.cli.prove.Rebuild;
import bedledger.cli.prove.Rules;
import bedledger.cli.prove.TraceCommand;
import bedledger.cli.prove.Verify;
import bedledger.cli.read.Bed;
import bedledger.cli.read.Beds;
import bedledger.cli.read.BlendCommand;
import bedledger.cli.read.HoursCommand;
import bedledger.cli.read.NitrogenCommand;
import bedledger.cli.read.ReadyCommand;
import bedledger.cli.read.ReturnedCommand;
import bedledger.cli.read.Seasons;
import bedledger.cli.read.ShowEntry;
import bedledger.cli.read.SoilCommand;
import bedledger.cli.read.WeatherCommand;
import bedledger.cli.report.Report;
import bedledger.cli.sheet.Import;
import bedledger.cli.start.Demo;
import bedledger.cli.start.New;
import bedledger.cli.write.Attach;
import bedledger.cli.write.Correct;
import bedledger.cli.write.Did;
import bedledger.cli.write.Strike;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine;

/** The commands, in the order the help lists them. */
final class Commands {
    static final List<Command> ALL = List.of(
            of("new", "Start", "start a book", New::new),
            of("demo", "Start", "an invented season in a practice book, and what it tells", Demo::new),
            new Command("did", "Write", "record one act: did flail N3 N4 --passes 2", around -> new Did(around)::run),
            new Command("correct", "Write", "replace an entry, with a reason", around -> new Correct(around)::run),
            new Command("import", "Write", "read a sheet of acts (CSV)", around -> new Import(around)::run),
            new Command("strike", "Write", "void an entry, with a reason", around -> new Strike(around)::run),
            new Command("attach", "Write", "keep a document with an entry", around -> new Attach(around)::run),
            of("today", "Look", "what is due, was done and lies under tarps today", TodayCommand::new),
            of("due", "Look", "what is due, or may not be done yet, and why", DueCommand::new),
            of("beds", "Look", "all beds, and what is in and on them", Beds::new),
            of("bed", "Look", "one bed: state, timeline, corrections, flips", Bed::new),
            of("entry", "Look", "one entry as it stands in the log", ShowEntry::new),
            of("ready", "Look", "which bed is ready, and when", ReadyCommand::new),
            of("returned", "Look", "organic matter that went back to the soil", ReturnedCommand::new),
            of("hours", "Look", "work as far as it was recorded, and where it was not", HoursCommand::new),
            of("weather", "Look", "what weather the book has; put a file of it in", WeatherCommand::new),
            of("nitrogen", "Look", "nitrogen set free or locked up; phosphorus in and sold", NitrogenCommand::new),
            of("soil", "Look", "soil carbon: samples, inputs, two balances", SoilCommand::new),
            of("blend", "Look", "water and C:N of a compost mix, asked beforehand or of a pile", BlendCommand::new),
            of("seasons", "Look", "what went back, season beside season", Seasons::new),
            of("rules", "Look", "the rule book, and the tables, with their sources", Rules::new),
            of("check", "Prove", "hold the record against the rule book", Check::new),
            of("gaps", "Prove", "what is not in the book, and what would answer it", GapsCommand::new),
            of("balance", "Prove", "what came in and went out of a crop or material", BalanceCommand::new),
            of("trace", "Prove", "where a lot, invoice, seed lot or input came from and went", TraceCommand::new),
            of("mock-audit", "Prove", "ask as an inspector would, and time the answers", MockAuditCommand::new),
            of("report", "Prove", "the audit report; for the agronomist: seasons and soil", Report::new),
            of("verify", "Prove", "check that nothing in the log was changed", Verify::new),
            of("checkpoint", "Prove", "sign the log as it stands", MakeCheckpoint::new),
            of("packet", "Prove", "the sealed file for the certifier", PacketCommand::new),
            of("inspect", "Prove", "check a packet, trusting nothing in it", InspectCommand::new),
            of("export", "Keep", "hand the record to other programs, in open standards", Export::new),
            of("rebuild", "Keep", "make the database anew from the journal", Rebuild::new));

    private static Command of(String name, String group, String says, Function<Surroundings, Callable<Integer>> make) {
        return new Command(name, group, says, around -> arguments -> run(around, make.apply(around), arguments));
    }

    private static int run(Surroundings around, Callable<Integer> command, List<String> arguments) {
        CommandLine line = new CommandLine(command);
        line.getCommandSpec().mixinStandardHelpOptions(true);
        line.getCommandSpec().usageMessage().width(80);
        try {
            CommandLine.ParseResult parsed = line.parseArgs(arguments.toArray(String[]::new));
            if (parsed.isUsageHelpRequested()) {
                line.getCommandSpec().parser().separator(" ");
                around.out().print(line.getUsageMessage(CommandLine.Help.Ansi.OFF));
                return Exit.OK;
            }
            if (parsed.isVersionHelpRequested()) {
                around.out().println("bedledger " + Bedledger.VERSION);
                return Exit.OK;
            }
            return command.call();
        } catch (CommandLine.ParameterException bad) {
            throw new Failure(
                    Exit.USAGE,
                    bad.getMessage() + "\nSee: " + line.getCommandSpec().name() + " --help");
        } catch (RuntimeException failed) {
            throw failed;
        } catch (Exception failed) {
            throw new IllegalStateException(failed);
        }
    }

    private Commands() {}
}
