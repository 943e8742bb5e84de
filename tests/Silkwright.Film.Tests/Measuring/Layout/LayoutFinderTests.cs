namespace Silkwright.Film.Tests.Measuring.Layout;

public class LayoutFinderTests
{
    /// <summary>Oracle: where the drawing puts them.</summary>
    [Theory]
    [InlineData(300)]
    [InlineData(600)]
    [InlineData(1200)]
    public void Register_marks_are_found_where_they_are_drawn_to_a_fiftieth_of_a_millimetre(double dpi)
    {
        var layout = JobFilms.Draw(JobFilms.Marks + "," + JobFilms.Heron, dpi: dpi).Layout!;
        (double X, double Y)[] drawn = [(100, 8), (8, 70), (192, 70), (100, 132)];
        Assert.Equal(drawn.Length, layout.Marks.Count);
        foreach (var (x, y) in drawn)
            Assert.Contains(layout.Marks, mark => Math.Abs(mark.XMm - x) < 0.02 + (12.7 / dpi) && Math.Abs(mark.YMm - y) < 0.02 + (12.7 / dpi));
    }

    [Theory]
    [InlineData("""{"line":[4,20,12,20],"lineMm":0.3},{"line":[8,16,8,24],"lineMm":0.3}""", true)]
    [InlineData("""{"ring":[8,20,2],"lineMm":0.2},{"ring":[8,20,4],"lineMm":0.2},{"line":[3,20,13,20],"lineMm":0.2},{"line":[8,15,8,25],"lineMm":0.2}""", true)]
    [InlineData("""{"ring":[8,20,4],"lineMm":0.3}""", false)]
    [InlineData("""{"disc":[8,20,4]}""", false)]
    [InlineData("""{"text":"t","at":[6,24],"sizeMm":12}""", false)]
    [InlineData("""{"text":"R","at":[6,24],"sizeMm":9}""", false)]
    [InlineData("""{"rect":[5,15,6,6]}""", false)]
    [InlineData("""{"line":[4,20,12,20],"lineMm":0.3},{"line":[6,16,6,24],"lineMm":0.3}""", false)]
    public void Crosses_and_targets_are_marks_and_nothing_else_is(string shape, bool isMark) =>
        Assert.Equal(isMark ? 1 : 0, JobFilms.Draw(shape + "," + JobFilms.Heron).Layout!.Marks.Count);

    /// <summary>A mark may stand half a millimetre beside artwork; where something reaches into its box it is none, and lettering is never one.</summary>
    [Theory]
    [InlineData("""{"register":[8,70,4]},{"rect":[12.5,20,180,110]}""", 1)]
    [InlineData("""{"register":[8,70,4]},{"rect":[12.5,20,180,110]},{"line":[3,74.4,13,74.4],"lineMm":0.2}""", 1)]
    [InlineData("""{"register":[8,70,4]},{"rect":[11,20,180,110]}""", 0)]
    [InlineData("""{"rect":[40,20,140,80]},{"text":"XOXO OXOX XX OO","at":[40,112],"sizeMm":11,"light":true},{"text":"OOO","at":[4,40],"sizeMm":9,"light":true}""", 0)]
    public void A_mark_near_artwork_is_found_where_nothing_reaches_into_its_box(string shapes, int marks)
    {
        var layout = JobFilms.Draw(shapes).Layout!;
        Assert.Equal(marks, layout.Marks.Count);
        if (marks > 0)
        {
            Assert.Equal(8, layout.Marks[0].XMm, 0.05);
            Assert.Equal(70, layout.Marks[0].YMm, 0.05);
            Assert.InRange(layout.Artwork!.LeftMm, layout.Image!.LeftMm, 13);
        }
    }

    [Fact]
    public void Artwork_beside_its_marks_is_boxed_without_them()
    {
        var artwork = JobFilms.Draw("""{"register":[8,70,4]},{"register":[100,8,4]},{"rect":[12.6,12.6,100,100]}""").Layout!.Artwork!;
        Assert.Equal(12.6, artwork.LeftMm, 1.0);
        Assert.Equal(12.6, artwork.TopMm, 1.0);
    }

    /// <summary>A cross in the middle of the artwork is artwork.</summary>
    [Fact]
    public void A_cross_in_the_middle_is_no_register_mark() =>
        Assert.Empty(JobFilms.Draw("""{"rect":[5,5,10,10]},{"rect":[185,125,10,10]},{"register":[100,70,4]}""").Layout!.Marks);

    [Fact]
    public void The_artwork_is_boxed_without_its_marks()
    {
        var layout = JobFilms.Draw(JobFilms.Marks + """,{"rect":[60,40,80,50]}""").Layout!;
        Assert.Equal(60, layout.Artwork!.LeftMm, 1.0);
        Assert.Equal(80, layout.Artwork.WidthMm, 2.0);
        Assert.Equal(50, layout.Artwork.HeightMm, 2.0);
        Assert.Equal(192, layout.Image!.WidthMm, 2.0);
    }

    [Fact]
    public void An_empty_film_has_no_image_and_no_marks()
    {
        var layout = JobFilms.Draw("""{"rect":[5,5,0.001,0.001]}""").Layout!;
        Assert.Null(layout.Image);
        Assert.Null(layout.Artwork);
        Assert.Empty(layout.Marks);
    }

    /// <summary>Oracle: the drawn area by plane geometry, 80 x 50 of 200 x 140 mm.</summary>
    [Fact]
    public void The_coarse_coverage_adds_up_to_the_film_s()
    {
        var layout = JobFilms.Draw("""{"rect":[60,40,80,50]}""").Layout!;
        var area = layout.Coverage.ToArray().Sum(share => share / 255.0) * layout.CellMm * layout.CellMm;
        Assert.Equal(80 * 50, area, 20.0);
        Assert.InRange(layout.Across, 1, 128);
    }
}
