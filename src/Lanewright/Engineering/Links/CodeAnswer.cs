using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Links;

/// <summary>What a share of wrong bits before a code comes to.</summary>
public sealed record CodeAnswer
{
    /// <summary>The code, or the interface type whose code it is.</summary>
    public required string Name { get; init; }

    /// <summary>Share of wrong bits before it.</summary>
    public required double Errors { get; init; }

    /// <summary>The share that may be there at most; null when not known.</summary>
    public Known<double>? Limit { get; init; }

    /// <summary>How far it is from there in dB of quality; null when not known.</summary>
    public Decibels? Margin { get; init; }

    /// <summary>Share of codewords that cannot be corrected; null where the code is of another kind.</summary>
    public double? Codewords { get; init; }

    /// <summary>Share of smallest frames that are lost; null where the code is of another kind.</summary>
    public double? Frames { get; init; }

    /// <summary>Half the distance of two levels over the noise that makes as many errors; null without errors.</summary>
    public double? QualityOfTwo => Errors > 0 ? LevelErrors.QualityFor(Errors) : null;

    /// <summary>The same of four levels; null without errors, and where there are more than four levels can make.</summary>
    public double? QualityOfFour => Errors is > 0 and < LevelErrors.MostOfFour ? LevelErrors.QualityForSymbolsOfFour(Errors * 2) : null;

    /// <summary>Share of smallest frames that would be lost without a code; null where the code is of another kind.</summary>
    public double? FramesUncoded { get; init; }

    /// <summary>Share of wrong bits behind the code; null where the code is of another kind.</summary>
    public double? ErrorsBehind { get; init; }

    /// <summary>Whether it is within its limit; unproven where none is known.</summary>
    public Verdict Verdict => Limit is not { } limit ? Verdict.Unproven : Errors <= limit.Value ? Verdict.Pass : Verdict.Fail;

    /// <summary>The answer for a code of the tables or the type of a wavelength; null where neither is known by the name.</summary>
    /// <param name="standards">The tables.</param>
    /// <param name="name">The code or the type.</param>
    /// <param name="errors">Share of wrong bits before the code; at least 0, below 0.5.</param>
    /// <param name="interleaved">Codewords that bits are dealt out to in turn.</param>
    public static CodeAnswer? Of(StandardsLibrary standards, string name, double errors, int interleaved)
    {
        if (standards.Wavelength(name) is { } type) return Against(new CodeAnswer { Name = name, Errors = errors }, type.ErrorLimit);
        if (standards.Fec(name) is not { } sheet || sheet.Real("smallest-bits") is not null) return null;
        var plain = Against(new CodeAnswer { Name = name, Errors = errors }, sheet.Real("ber-limit"));
        if (ReedSolomonCode.Find(standards, name) is not { } code) return plain;
        var lost = code.Codewords(errors);
        return plain with
        {
            Codewords = lost,
            Frames = Math.Min(1, ReedSolomonCode.Frames(lost, code.FramesIn(standards), interleaved)),
            FramesUncoded = ReedSolomonCode.FramesUncoded(errors, ReedSolomonCode.SmallestFrame(standards)),
            ErrorsBehind = code.Bits(errors),
        };
    }

    private static CodeAnswer Against(CodeAnswer answer, Known<double>? limit) => answer with
    {
        Limit = limit,
        Margin = limit is { } most ? new CodeMargin(most.Value).Of(answer.Errors) : null,
    };
}
