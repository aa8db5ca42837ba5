using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Binding;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Bench;

/// <summary>What fabric to buy for ever more hosts, out of the whole shipped catalogue and with nothing remembered from the question
/// before.</summary>
internal static class SizeBench
{
    private const int Runs = 3;

    /// <summary>Prints a line a number of hosts, with the time and the gap of each shape.</summary>
    public static void Run(IReadOnlyList<int> sizes)
    {
        Console.WriteLine();
        Console.WriteLine("sizing: hosts of one 100G port, 16 to a rack, three to one, five years, whole catalogue");
        var context = new FinderContext(
            StandardsLibrary.Shipped, CatalogueBinder.Shipped, PolicyBinder.Default(StandardsLibrary.Shipped));
        var before = (Hosts: 0, Time: 0.0);
        foreach (var hosts in sizes)
        {
            var answer = new Sizing(context).Of(Question(hosts));
            var (whole, processors) = Clock.Both(Runs, () => answer = new Sizing(context).Of(Question(hosts)));
            Console.WriteLine(
                $"  {Numerals.Whole(hosts)} hosts: {Numerals.Fixed(whole, 0)} ms ({Numerals.Fixed(processors, 0)} of processors)"
                + (before.Hosts > 0 ? $", {Numerals.Fixed(PerDouble(before, (hosts, processors)), 2)} times when hosts double" : ""));
            foreach (var option in answer.Options)
            {
                var alone = Question(hosts) with { Shapes = [option.Shape] };
                var time = Clock.Best(1, () => new Sizing(context).Of(alone));
                Console.WriteLine($"    {option.Needs.Name}: {Numerals.Fixed(time, 0)} ms alone, {option.PriceOverYears} and no less than "
                    + $"{option.LowerBound}, gap {Numerals.Fixed(GapOf(option) * 100, 2)} %");
            }
            before = (hosts, processors);
        }
        SizeBaselines.Run();
    }

    private static double GapOf(FabricOption option) =>
        1 - ((double)option.LowerBound.Hundredths / (double)option.PriceOverYears.Hundredths);

    private static double PerDouble((int Hosts, double Time) few, (int Hosts, double Time) many) =>
        Math.Pow(2, Math.Log(many.Time / few.Time) / Math.Log(many.Hosts / (double)few.Hosts));

    private static WantedFabric Question(int hosts) => new()
    {
        Hosts = [new HostDemand { Name = "host", Count = hosts, Rate = BitRate.FromGigabits(100), PerRack = 16 }],
        Oversubscription = [new Ratio(3, 1)],
        Years = 5,
        EnergyPrice = EnergyPrice.FromPerKilowattHour(0.15m),
        Overhead = Share.From(0.4),
    };
}
