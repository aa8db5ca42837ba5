using Google.OrTools.Sat;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Tests.Fabrics.Support;

namespace Lanewright.Bench;

/// <summary>The same question about two tiers answered in the same run by counting every fabric one after another, and by a
/// general-purpose solver on the plain integer model: invented switches of one kind of port, one cable of one price.</summary>
internal static class SizeBaselines
{
    private const int Runs = 3;
    private const int LinkPrice = 2;
    private const int Ratio = 3;

    private static readonly SyntheticSwitch[] Switches =
        [new("s32", 32, 300), new("s48", 48, 470), new("s64", 64, 560), new("s96", 96, 1000), new("s128", 128, 1500)];

    /// <summary>Prints a line a number of hosts.</summary>
    public static void Run()
    {
        Console.WriteLine();
        Console.WriteLine(
            "two tiers of five invented switches, three to one: here, by counting every fabric, and by a general solver (CP-SAT)");
        foreach (var hosts in new[] { 250, 500, 1000, 2000 })
        {
            var wanted = SyntheticFabrics.Wanted(hosts, new Ratio(Ratio, 1), shapes: FabricShape.LeafSpine);
            var (ours, counted, solved) = (0L, 0L, 0L);
            var here = Clock.Best(Runs, () => ours = (long)SyntheticFabrics.Sizing(Switches, LinkPrice).Of(wanted).Options[0].Price.Units);
            var brute = Clock.Best(1, () => counted = FabricBruteForce.LeafSpine(
                [(hosts, 1)], Switches, new Ratio(Ratio, 1), 0, LinkPrice, s => s.Price) ?? 0);
            var solver = Clock.Best(1, () => solved = Solve(hosts));
            Console.WriteLine($"  {Numerals.Whole(hosts)} hosts: {Numerals.Fixed(here, 1)} ms here, places and prices of cables included; "
                + $"{Numerals.Fixed(brute, 1)} ms counting, ratio {Numerals.Fixed(here / brute, 3)}; "
                + $"{Numerals.Fixed(solver, 1)} ms solver, "
                + $"ratio {Numerals.Fixed(here / solver, 3)}; prices {ours}, {counted}, {solved}");
        }
    }

    /// <summary>The least price as the solver finds it: which switches, hosts of a leaf, leaves, spines and links between each
    /// two.</summary>
    private static long Solve(int hosts)
    {
        var most = Switches.Max(s => s.Radix);
        var model = new CpModel();
        var (leaf, spine) = (Choice(model, "leaf"), Choice(model, "spine"));
        var down = model.NewIntVar(1, most, "down");
        var parallel = model.NewIntVar(1, most, "parallel");
        var spines = model.NewIntVar(1, most, "spines");
        var leaves = model.NewIntVar(1, hosts, "leaves");
        var up = Product(model, spines, parallel, most);
        model.Add(down + up <= Weighted(leaf, s => s.Radix));
        model.Add(down <= Ratio * up);
        model.Add(Product(model, leaves, parallel, most) <= Weighted(spine, s => s.Radix));
        model.Add(Product(model, leaves, down, (long)hosts * most) >= hosts);
        var price = (long)hosts * Switches.Max(s => s.Price);
        var leafPrice = Product(model, leaves, Cost(model, leaf), price);
        var spinePrice = Product(model, spines, Cost(model, spine), price);
        var links = Product(model, leaves, up, (long)hosts * most);
        model.Minimize(leafPrice + spinePrice + (LinkPrice * links) + (LinkPrice * hosts));
        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1,max_time_in_seconds:60" };
        return solver.Solve(model) == CpSolverStatus.Optimal ? (long)Math.Round(solver.ObjectiveValue) : -1;
    }

    private static BoolVar[] Choice(CpModel model, string name)
    {
        var choice = Switches.Select(s => model.NewBoolVar(name + s.Name)).ToArray();
        model.AddExactlyOne(choice);
        return choice;
    }

    private static LinearExpr Weighted(BoolVar[] choice, Func<SyntheticSwitch, long> weight) =>
        LinearExpr.WeightedSum(choice, Switches.Select(weight));

    private static IntVar Cost(CpModel model, BoolVar[] choice)
    {
        var cost = model.NewIntVar(0, Switches.Max(s => s.Price), "cost");
        model.Add(cost == Weighted(choice, s => s.Price));
        return cost;
    }

    private static IntVar Product(CpModel model, IntVar one, IntVar other, long most)
    {
        var product = model.NewIntVar(0, most, "product");
        model.AddMultiplicationEquality(product, one, other);
        return product;
    }
}
