global using Lanewright.Tests.Support;
global using Xunit;
