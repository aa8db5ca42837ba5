using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Devices;
using Lanewright.Model.Lines;
using Lanewright.Model.Links;
using Lanewright.Model.Places;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns the section <c>lines</c> into lines.</summary>
internal sealed class LineBinder(
    PlanTree tree, StandardsLibrary standards, Building building, ImmutableArray<FibreSpan> spans, FindingSink findings)
{
    /// <summary>Reads which devices and cages the ends of a line are.</summary>
    public required LinkEndBinder Ends { get; init; }

    /// <summary>All devices.</summary>
    public required DeviceTable Devices { get; init; }

    private const int MostLines = 2000;
    private const double MostFigure = 30;

    /// <summary>The lines in natural order of their names.</summary>
    public ImmutableArray<LineStatement> Bind()
    {
        var lines = ImmutableArray.CreateBuilder<LineStatement>();
        foreach (var (name, map, span) in tree.Named("lines", "the line"))
        {
            if (lines.Count == MostLines)
            {
                findings.Add(ModelFindings.PlanOutOfBounds, span, $"with '{name}' the plan has more than {MostLines} lines");
                break;
            }
            if (Bind(lines.Count, name, map, span) is { } line) lines.Add(line);
        }
        return lines.ToImmutable();
    }

    private LineStatement? Bind(int index, string name, MapNode map, SourceSpan span)
    {
        var before = findings.ErrorCount;
        var (from, to) = (SpanBinder.SiteOf(building, map, "from", findings), SpanBinder.SiteOf(building, map, "to", findings));
        var type = TypeOf(map);
        var (over, other) = (SpansOf(map, "over"), SpansOf(map, "other-way"));
        if (from is null || to is null || findings.ErrorCount > before) return null;
        if (from == to) Contradicts(map.SpanOf("to"), $"the line '{name}' ends where it begins; name the site it leads to");
        CheckType(name, map, span, type);
        var spacing = map.InUnits("spacing", UnitText.Frequencies) is { } width and > 0
            ? new SpacingChoice(Frequency.FromGigahertz(width), SpacingChoice.Stated)
            : standards.UsualSpacing(type, map.Rate("rate") ?? default);
        var channels = map.Whole("channels") ?? 1;
        var first = map.InUnits("first", UnitText.Frequencies) is { } lowest and > 0 ? Frequency.FromGigahertz(lowest) : (Frequency?)null;
        CheckChannels(name, map, span, channels, spacing.Spacing, first);
        CheckWay(map, "over", over, from, to);
        CheckWay(map, "other-way", other, from, to);
        if (!other.IsEmpty && over.IsEmpty)
            Contradicts(map.SpanOf("other-way"),
                $"the line '{name}' has another way and no first one; say both with 'over' and 'other-way'");
        var (booster, preamplifier, inLine) = (AmplifierOf(map, "booster"), AmplifierOf(map, "preamplifier"), AmplifierOf(map, "in-line"));
        if (findings.ErrorCount > before || findings.HasErrorIn(map.Span)) return null;
        var line = new LineStatement
        {
            Index = index,
            Name = name,
            From = from,
            To = to,
            Type = type,
            Rate = type?.Rate ?? map.Rate("rate") ?? default,
            Channels = channels,
            Spacing = spacing.Spacing,
            SpacingWhy = spacing.Why,
            First = first,
            Routes = !other.IsEmpty ? 2 : map.Whole("routes") ?? 1,
            Over = over,
            OtherWay = other,
            Scheme = map.Text("scheme") ?? "",
            Booster = booster,
            Preamplifier = preamplifier,
            InLine = inLine,
            MultiplexerLoss = map.Decibels("multiplexer-loss"),
            Launch = LevelOf(map, "launch"),
            Transmitter = LevelOf(map, "transmitter"),
            TransmitterOsnr = map.Decibels("transmitter-osnr"),
            Pdl = map.Decibels("pdl"),
            FilterPenalty = map.Decibels("filter-penalty"),
            LeastMargin = map.Decibels("least-margin") ?? default,
            LatencyMost = DelayOf(map, "latency"),
            DifferenceMost = DelayOf(map, "latency-difference"),
            AvailabilityLeast = map.Share("availability"),
            Span = span,
        };
        line = Placed(line, map);
        return findings.ErrorCount > before || findings.HasErrorIn(map.Span) ? null : line;
    }

    /// <summary>The line with the places that the plan names for its modules and its other equipment.</summary>
    private LineStatement Placed(LineStatement line, MapNode map)
    {
        var placed = line with
        {
            FromEnd = EndOf(map, "from-ports", line.From),
            ToEnd = EndOf(map, "to-ports", line.To),
            FromShelves = PlacesOf(map, "from-shelf", line.From, line.Routes),
            ToShelves = PlacesOf(map, "to-shelf", line.To, line.Routes),
            FromPanels = PlacesOf(map, "from-panel", line.From, line.Routes),
            ToPanels = PlacesOf(map, "to-panel", line.To, line.Routes),
        };
        CheckEnds(line.Name, map, placed.FromEnd, placed.ToEnd);
        return placed;
    }

    private WavelengthType? TypeOf(MapNode map) => map.Text("type") is { } name
        ? Names.Require(standards.Wavelength(name), "type of a wavelength", name, standards.WavelengthTypes.Select(t => t.Name),
            map.SpanOf("type"), findings)
        : null;

    private void CheckType(string name, MapNode map, SourceSpan span, WavelengthType? type)
    {
        if (type is null && map["rate"] is null)
            findings.Add(NotationFindings.KeyMissing, span, $"what the line '{name}' carries is not said; write type or rate");
        else if (type is not null && map.Rate("rate") is { } rate && rate != type.Rate)
            Contradicts(map.SpanOf("rate"), $"{type.Name} carries {type.Rate} and not {rate}; leave one of the two out");
    }

    private void CheckChannels(string name, MapNode map, SourceSpan span, int channels, Frequency spacing, Frequency? first)
    {
        var grid = standards.Grid;
        var at = map["channels"] is null ? span : map.SpanOf("channels");
        var room = Math.Floor((grid.BandRoom.Value.Hertz / spacing.Hertz) + 1e-9);
        if (spacing < grid.FlexibleStep.Value)
            Contradicts(map.SpanOf("spacing"),
                $"channels of '{name}' lie {spacing} apart, and no grid is finer than {grid.FlexibleStep.Value}");
        else if (channels > room)
            Contradicts(at, $"{channels} channels {spacing} apart do not fit; the band holds {Numerals.Plain(room)}");
        else if (first is { } lowest && (lowest < grid.BandLow.Value || lowest + (spacing * (channels - 1)) > grid.BandHigh.Value))
            Contradicts(map.SpanOf("first"), $"the channels of '{name}' leave the band of {grid.BandLow.Value} to {grid.BandHigh.Value}");
        else if (first is { } off && !grid.IsOnGrid(off))
            Contradicts(map.SpanOf("first"), $"{off} is on no grid: channels lie {grid.FlexibleStep.Value} apart from {grid.Anchor.Value}");
    }

    private ImmutableArray<FibreSpan> SpansOf(MapNode map, string key)
    {
        var named = ImmutableArray.CreateBuilder<FibreSpan>();
        foreach (var text in map.Texts(key))
        {
            var span = spans.FirstOrDefault(s => s.Name == text.Value);
            if (span is not null) named.Add(span);
            // A span that is described and could not be read has been reported where it stands.
            else if (tree.Describes("spans", text.Value)) findings.Add(ModelFindings.LineContradicts, text.Span,
                $"the span '{text.Value}' could not be read, so nothing can go over it");
            else Names.Require(span, "span", text.Value, spans.Select(s => s.Name), text.Span, findings);
        }
        return named.ToImmutable();
    }

    /// <summary>A way leads from the one site to the other, from span to span, and over none twice.</summary>
    private void CheckWay(MapNode map, string key, ImmutableArray<FibreSpan> way, Site from, Site to)
    {
        if (way.IsEmpty) return;
        var here = from;
        foreach (var span in way)
        {
            if (span.From != here && span.To != here)
            {
                Contradicts(map.SpanOf(key), $"'{span.Name}' does not begin at {here.Name}, where the way has come to");
                return;
            }
            here = span.From == here ? span.To : span.From;
        }
        if (here != to) Contradicts(map.SpanOf(key), $"the way ends at {here.Name} and not at {to.Name}");
        else if (way.Distinct().Count() < way.Length) Contradicts(map.SpanOf(key), "the way goes over a span twice");
    }

    /// <summary>Devices and cages of one end; null where the plan does not say, or says it of a group that could not be read.</summary>
    private LinkEnd? EndOf(MapNode map, string key, Site site)
    {
        if (map[key] is null || Ends.End(map, key) is not { } end || end.Groups.Any(g => g.IsFaulty)) return null;
        CheckPlaces(map.SpanOf(key), end.Devices, site);
        return end;
    }

    private void CheckEnds(string name, MapNode map, LinkEnd? from, LinkEnd? to)
    {
        if (map["from-ports"] is null != map["to-ports"] is null)
            Contradicts(map.SpanOf(map["from-ports"] is null ? "to-ports" : "from-ports"),
                $"the line '{name}' has ports at one end alone; name both with 'from-ports' and 'to-ports'");
        else if (from is not null && to is not null && from.Devices.Intersect(to.Devices).Any())
            Contradicts(map.SpanOf("to-ports"), $"the line '{name}' leads from a device to itself; name a device of the other site");
    }

    /// <summary>Frames or panels at one end: one for all routes or one for each.</summary>
    private ImmutableArray<int> PlacesOf(MapNode map, string key, Site site, int routes)
    {
        var found = Ends.Devices(map, key);
        if (found.Length > 1 && found.Length != routes)
            Contradicts(map.SpanOf(key), $"'{key}' names {found.Length} and the line has {Numerals.Whole(routes)} "
                + (routes == 1 ? "route" : "routes") + "; name one for all, or one for each");
        CheckPlaces(map.SpanOf(key), found, site);
        return found;
    }

    private void CheckPlaces(SourceSpan at, ImmutableArray<int> devices, Site site)
    {
        foreach (var device in devices)
        {
            if (Devices.Rack(device) is not { } rack || rack.Hall.Site == site.Name) continue;
            Contradicts(at, $"{Devices.Name(device)} stands in {rack.Hall.Site}, and this end of the line is in {site.Name}");
            return;
        }
    }

    private AmplifierModel? AmplifierOf(MapNode map, string key)
    {
        var usual = standards.Amplifier("EDFA");
        if (map.Text(key) is not { } text) return usual;
        if (text == LineLanguage.None) return null;
        if (standards.Amplifier(text) is { } model) return model;
        if (UnitText.TryRead(text, UnitText.Ratios, out var figure))
        {
            var floor = standards.LineValue("amplifier", "figure-floor").Value;
            if (figure >= floor && figure <= MostFigure) return usual?.With(Decibels.From(figure));
            Contradicts(map.SpanOf(key), $"a noise figure of {Numerals.Unit(figure, "dB")}: no amplifier of much gain is quieter than "
                + $"{Numerals.Unit(floor, "dB")}, and none is noisier than {Numerals.Unit(MostFigure, "dB")}");
            return null;
        }
        Contradicts(map.SpanOf(key), $"'{text}' is neither a noise figure such as '5.5 dB' nor one of "
            + $"{string.Join(", ", standards.Amplifiers.Select(a => a.Name))} nor 'no'");
        return null;
    }

    private static PowerLevel? LevelOf(MapNode map, string key) =>
        map.InUnits(key, UnitText.Levels) is { } level ? PowerLevel.FromDbm(level) : null;

    private static Duration? DelayOf(MapNode map, string key) =>
        map.InUnits(key, UnitText.Delays) is { } delay ? Duration.FromNanoseconds(delay) : null;

    private void Contradicts(SourceSpan span, string message) => findings.Add(ModelFindings.LineContradicts, span, message);
}
