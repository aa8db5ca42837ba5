using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>Fibre from one place to the next, with all that takes light from it.</summary>
public sealed record LineSpan
{
    /// <summary>Its name; empty for one that was only asked about.</summary>
    public string Name { get; init; } = "";

    /// <summary>Whether amplifiers may stand anywhere on it, and not at its ends alone.</summary>
    public bool MayDivide { get; init; }

    /// <summary>Whether light goes on from its end to the next span without an amplifier between.</summary>
    public bool GoesOn { get; init; }

    /// <summary>The kind of fibre.</summary>
    public required LineFibre Fibre { get; init; }

    /// <summary>How long it is; above zero.</summary>
    public required Length Length { get; init; }

    /// <summary>Loss of the glass; above zero.</summary>
    public required Known<Attenuation> Attenuation { get; init; }

    /// <summary>Measured loss from end to end, connectors and splices in it; null when it is to be computed.</summary>
    public Decibels? MeasuredLoss { get; init; }

    /// <summary>Measured dispersion; null for the values of the kind of fibre.</summary>
    public DispersionRate? MeasuredDispersion { get; init; }

    /// <summary>Measured polarisation-mode dispersion in ps/sqrt(km); null for that of the kind.</summary>
    public double? MeasuredPmd { get; init; }

    /// <summary>Mated pairs.</summary>
    public int Connectors { get; init; }

    /// <summary>Loss of each mated pair.</summary>
    public required Known<Decibels> ConnectorLoss { get; init; }

    /// <summary>Splices.</summary>
    public int Splices { get; init; }

    /// <summary>Loss of each splice.</summary>
    public required Known<Decibels> SpliceLoss { get; init; }

    /// <summary>Loss kept back for ageing.</summary>
    public Decibels Ageing { get; init; }

    /// <summary>Loss kept back for splices of repairs to come.</summary>
    public Decibels Repair { get; init; }

    /// <summary>Loss that the glass has more at the wavelengths used than where it is reckoned.</summary>
    public Decibels Farther { get; init; }

    /// <summary>What takes light, part by part.</summary>
    public ImmutableArray<LossPart> Parts
    {
        get
        {
            var parts = ImmutableArray.CreateBuilder<LossPart>();
            if (MeasuredLoss is { } measured) parts.Add(new LossPart("measured", measured));
            else
            {
                parts.Add(new LossPart("fibre", Attenuation.Value * Length));
                if (Connectors > 0) parts.Add(new LossPart("connectors", ConnectorLoss.Value * Connectors));
                if (Splices > 0) parts.Add(new LossPart("splices", SpliceLoss.Value * Splices));
            }
            if (Farther.Value > 0) parts.Add(new LossPart("other wavelengths", Farther));
            if (Ageing.Value > 0) parts.Add(new LossPart("ageing", Ageing));
            if (Repair.Value > 0) parts.Add(new LossPart("repairs", Repair));
            return parts.ToImmutable();
        }
    }

    /// <summary>All of it.</summary>
    public Decibels Loss => Parts.Aggregate(default(Decibels), (sum, part) => sum + part.Loss);

    /// <summary>The weakest mark of what the loss rests on.</summary>
    public Mark Mark
    {
        get
        {
            if (MeasuredLoss is not null) return Mark.Seen;
            var mark = Attenuation.Source.Mark;
            if (Connectors > 0) mark = Marks.Weaker(mark, ConnectorLoss.Source.Mark);
            return Splices > 0 ? Marks.Weaker(mark, SpliceLoss.Source.Mark) : mark;
        }
    }

    /// <summary>Largest dispersion of a kilometre; null when not known.</summary>
    public Known<DispersionRate>? DispersionMax =>
        MeasuredDispersion is { } measured ? new Known<DispersionRate>(measured, Citation.OfPlan) : Fibre.DispersionMax;

    /// <summary>The glass for propagation; null when a constant of it is not known.</summary>
    public GlassSpan? Glass
    {
        get
        {
            var dispersion = MeasuredDispersion ?? Fibre.Dispersion?.Value;
            if (dispersion is not { } rate || Fibre.Slope is not { } slope || Fibre.Gamma is not { } gamma) return null;
            // Of what was measured nobody says where it is lost: a bad splice far out leaves light its full nonlinear way, so glass is not
            // taken to lose more than its kind does.
            var loss = MeasuredLoss is { } all && !IsAttenuationStated
                ? Quantities.Attenuation.FromDecibelsPerKilometre(
                    Math.Min(all.Value / Length.Kilometres, Attenuation.Value.DecibelsPerKilometre))
                : Attenuation.Value;
            return new GlassSpan(loss, Length, rate, slope.Value, gamma.Value, GlassSpan.Usual);
        }
    }

    /// <summary>One of several equal pieces of it, with a patch panel at each new place between them.</summary>
    public LineSpan Piece(int pieces)
    {
        if (pieces == 1) return this;
        var share = 1.0 / pieces;
        return this with
        {
            MayDivide = false,
            Length = Length * share,
            MeasuredLoss = MeasuredLoss is { } all ? (all * share) + (ConnectorLoss.Value * (2 - (2 * share))) : null,
            Connectors = (int)Math.Ceiling((Connectors + (2 * (pieces - 1))) * share),
            Splices = (int)Math.Ceiling(Splices * share),
            Farther = Farther * share,
            Ageing = Ageing * share,
            Repair = Repair * share,
        };
    }

    /// <summary>Mean polarisation-mode dispersion in ps; null when not known.</summary>
    public double? Pmd => (MeasuredPmd ?? Fibre.PmdMax?.Value) * Math.Sqrt(Length.Kilometres);

    private bool IsAttenuationStated => ReferenceEquals(Attenuation.Source, Citation.OfPlan);
}
