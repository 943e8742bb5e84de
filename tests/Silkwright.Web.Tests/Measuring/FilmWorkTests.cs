using Silkwright.Web.Measuring;

namespace Silkwright.Web.Tests.Measuring;

public sealed class FilmWorkTests
{
    [Theory]
    [InlineData(0.02, 4, "2 % measured")]
    [InlineData(0.25, 4, "25 % measured, about 12 s left")]
    [InlineData(0.999, 4, "99 % measured")]
    [InlineData(0.1, 60, "10 % measured, about 9 min left")]
    public void The_words_tell_how_far_it_is_and_what_time_is_left(double share, double seconds, string words) =>
        Assert.Equal(words, FilmWork.Measuring(share, TimeSpan.FromSeconds(seconds)).Words);
}
