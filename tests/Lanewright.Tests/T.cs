namespace Lanewright.Tests;
public class T { [Xunit.Fact] public void A() => Xunit.Assert.Equal(1, Tmp.X); }
